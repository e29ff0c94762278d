using Passagework.Foundation;

namespace Passagework.Theory;

/// <summary>A note's name without octave: a letter and how far it is raised or lowered.</summary>
/// <remarks>The default value is C. Raised or lowered by at most three semitones.</remarks>
public readonly record struct NoteName
{
    private const string Letters = "CDEFGAB";

    private NoteName(int letter, int alteration)
    {
        Letter = letter;
        Alteration = alteration;
    }

    /// <summary>0 for C to 6 for B.</summary>
    public int Letter { get; }

    /// <summary>Semitones above the natural note: 1 sharp, −1 flat; −3 to 3.</summary>
    public int Alteration { get; }

    /// <summary>Semitones of the natural notes above C, which are also the steps of every major scale.</summary>
    internal static ReadOnlySpan<int> NaturalSemitones => [0, 2, 4, 5, 7, 9, 11];

    /// <summary>0 for C to 11 for B.</summary>
    public int PitchClass => WholeNumbers.Modulo(NaturalSemitones[Letter] + Alteration, 12);

    /// <summary>Semitones above the C below the natural note; −3 to 14 (Cb is −1, B# is 12).</summary>
    internal int SemitonesAboveC => NaturalSemitones[Letter] + Alteration;

    /// <summary>The name with that letter (0 C to 6 B) and alteration (−3 to 3).</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside these ranges.</exception>
    public static NoteName Of(int letter, int alteration)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(letter);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(letter, 6);
        ArgumentOutOfRangeException.ThrowIfLessThan(alteration, -3);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(alteration, 3);
        return new NoteName(letter, alteration);
    }

    /// <summary>Reads a capital letter A to G followed by up to three of the same sign, <c>#</c> or <c>b</c>.</summary>
    public static bool TryParse(string? text, out NoteName name)
    {
        name = default;
        if (string.IsNullOrEmpty(text) || text.Length > 4)
        {
            return false;
        }

        var letter = Letters.IndexOf(text[0], StringComparison.Ordinal);
        var signs = text[1..];
        var sharps = signs.All(sign => sign == '#');
        if (letter < 0 || !(sharps || signs.All(sign => sign == 'b')))
        {
            return false;
        }

        name = new NoteName(letter, sharps ? signs.Length : -signs.Length);
        return true;
    }

    /// <summary>Such as <c>C#</c> or <c>Bb</c>.</summary>
    public override string ToString() =>
        Letters[Letter] + new string(Alteration < 0 ? 'b' : '#', Math.Abs(Alteration));
}
