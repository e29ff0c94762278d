using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Notation;

/// <summary>A key signature: sharps (flats below 0) and mode.</summary>
/// <param name="Sharps">−7 to 7.</param>
/// <param name="IsMinor">Whether it names a minor key.</param>
internal readonly record struct MidiKey(int Sharps, bool IsMinor)
{
    private const int Most = 7;
    private const int MinorFifths = 3;

    // Fifths above C of the natural notes C to B.
    private static readonly int[] Fifths = [0, 2, 4, -1, 1, 3, 5];

    /// <summary>The major or minor key of a set's root; null where that key has no signature of up to seven signs.</summary>
    public static MidiKey? Of(NoteSet? notes)
    {
        if (notes is null)
        {
            return null;
        }

        var root = Fifths[notes.Root.Letter] + (7 * notes.Root.Alteration);
        var sharps = notes.IsMinor ? root - MinorFifths : root;
        return Math.Abs(sharps) <= Most ? new MidiKey(sharps, notes.IsMinor) : null;
    }

    /// <summary>The major or natural minor scale of the key.</summary>
    public NoteSet ToNotes()
    {
        var fifths = Sharps + (IsMinor ? MinorFifths : 0);
        var letter = WholeNumbers.Modulo(4 * fifths, 7);
        var root = NoteName.Of(letter, (fifths - Fifths[letter]) / 7);
        return NoteSet.TryNamed(root, IsMinor ? "natural minor" : "major", out var notes)
            ? notes
            : throw new System.Diagnostics.UnreachableException();
    }
}
