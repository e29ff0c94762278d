using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Notation;

/// <summary>A key signature.</summary>
/// <param name="Fifths">Sharps, or flats when negative; −7 to 7.</param>
/// <param name="Mode">The mode as MusicXML writes it; null when unknown.</param>
internal sealed record ScoreKey(int Fifths, string? Mode)
{
    // Scale, mode, and how many fifths its signature lies above that of the major scale on the same root.
    private static readonly (string Scale, string Mode, int Fifths)[] Modes =
    [
        ("major", "major", 0),
        ("natural minor", "minor", -3),
        ("dorian", "dorian", -2),
        ("phrygian", "phrygian", -4),
        ("lydian", "lydian", 1),
        ("mixolydian", "mixolydian", -1),
        ("locrian", "locrian", -5),
    ];

    // C D E F G A B on the circle of fifths.
    private static readonly int[] FifthsOfLetters = [0, 2, 4, -1, 1, 3, 5];

    /// <summary>No signs and no mode.</summary>
    public static ScoreKey None { get; } = new(0, null);

    /// <summary>The usual signature: of the scale itself, else of major or minor; none where it needs over seven signs.</summary>
    public static ScoreKey Of(NoteSet? notes)
    {
        if (notes is null)
        {
            return None;
        }

        var scale = Array.FindIndex(Modes, mode => mode.Scale == notes.Scale);
        var usual = notes.IsMinor ? 1 : 0;
        var (_, word, shift) = Modes[scale >= 0 ? scale : usual];
        var fifths = FifthsOfLetters[notes.Root.Letter] + (7 * notes.Root.Alteration) + shift;
        return Math.Abs(fifths) <= 7 ? new ScoreKey(fifths, word) : None;
    }

    /// <summary>How far the signature raises a letter, 0 C to 6 B.</summary>
    public int AlterationOf(int letter)
    {
        // Sharps come in the order F C G D A E B, flats the other way.
        var order = FifthsOfLetters[letter] + 1;
        var flat = Fifths < order - 6 ? -1 : 0;
        return Fifths > order ? 1 : flat;
    }

    /// <summary>The scale that the signature and mode name; null without a known mode.</summary>
    public NoteSet? Notes()
    {
        var at = Array.FindIndex(Modes, mode => mode.Mode == Mode);
        if (at < 0)
        {
            return null;
        }

        // The root lies as many fifths above C as the signature has above that of the mode on C.
        var root = Fifths - Modes[at].Fifths;
        var letter = Array.IndexOf(FifthsOfLetters, WholeNumbers.Modulo(root + 1, 7) - 1);
        var alteration = (root - FifthsOfLetters[letter]) / 7;
        return
            Math.Abs(alteration) <= 3
            && NoteSet.TryNamed(NoteName.Of(letter, alteration), Modes[at].Scale, out var set)
            ? set
            : null;
    }
}
