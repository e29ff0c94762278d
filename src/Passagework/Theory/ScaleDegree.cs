using System.Globalization;

namespace Passagework.Theory;

/// <summary>A step of a scale or chord: a number that gives the letter and how it differs from the major scale.</summary>
/// <remarks>The default value is the root. Numbers 8 to 13 are those of chords: 9 is the 2 above the octave.</remarks>
public readonly record struct ScaleDegree
{
    private readonly int _numberLessOne;

    private ScaleDegree(int number, int alteration)
    {
        _numberLessOne = number - 1;
        Alteration = alteration;
    }

    /// <summary>1 for the root, 1 to 13.</summary>
    public int Number => _numberLessOne + 1;

    /// <summary>Semitones above the step of the major scale: −1 for b3, 1 for #4.</summary>
    public int Alteration { get; }

    /// <summary>Letters above the root's, 0 to 6.</summary>
    internal int Letters => _numberLessOne % 7;

    /// <summary>Semitones above the root; beyond 11 for numbers from 8.</summary>
    public int Semitones => NoteName.NaturalSemitones[Letters] + (12 * (_numberLessOne / 7)) + Alteration;

    /// <summary>Reads <c>1</c>, <c>b3</c>, <c>#4</c>, <c>bb7</c>, <c>9</c>: up to two equal signs, then 1 to 13.</summary>
    public static bool TryParse(string? text, out ScaleDegree degree)
    {
        degree = default;
        var signs = text?.TakeWhile(sign => sign is 'b' or '#').Count() ?? 0;
        if (
            text is null
            || signs > 2
            || (signs == 2 && text[0] != text[1])
            || !int.TryParse(
                text.AsSpan(signs),
                NumberStyles.None,
                CultureInfo.InvariantCulture,
                out var number
            )
            || number is < 1 or > 13
        )
        {
            return false;
        }

        degree = new ScaleDegree(number, text[0] == '#' ? signs : -signs);
        return true;
    }

    /// <summary>Such as <c>b3</c>.</summary>
    public override string ToString() =>
        new string(Alteration < 0 ? 'b' : '#', Math.Abs(Alteration))
        + Number.ToString(CultureInfo.InvariantCulture);

    /// <summary>The degree of that letter which lies <paramref name="semitones"/> above the root.</summary>
    internal static ScaleDegree Reaching(int semitones, int number) =>
        new(number, semitones - NoteName.NaturalSemitones[number - 1]);

    /// <summary>Reads degrees separated by spaces, from our own tables.</summary>
    internal static IEnumerable<ScaleDegree> ParseAll(string degrees) =>
        degrees
            .Split(' ')
            .Select(text =>
                TryParse(text, out var degree) ? degree : throw new ArgumentException(text, nameof(degrees))
            );
}
