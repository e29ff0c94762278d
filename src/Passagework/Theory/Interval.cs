using System.Globalization;

namespace Passagework.Theory;

/// <summary>The distance between two spelled pitches: letters counted and semitones counted.</summary>
/// <remarks>
/// The default value is the perfect unison. Both distances are signed; a fall has negative letters, or none and
/// negative semitones. Semitones alone can't be spelled: C to D# and C to Eb are one key apart and two intervals.
/// </remarks>
/// <param name="Letters">Letters upward: 2 for any third, 7 for any octave.</param>
/// <param name="Semitones">Semitones upward.</param>
public readonly record struct Interval(int Letters, int Semitones)
{
    private static readonly bool[] HasPerfect = [true, false, false, true, true, false, false];

    private static readonly string[] Ordinals =
    [
        "unison",
        "second",
        "third",
        "fourth",
        "fifth",
        "sixth",
        "seventh",
        "octave",
        "ninth",
        "tenth",
        "eleventh",
        "twelfth",
        "thirteenth",
        "fourteenth",
        "fifteenth",
    ];

    /// <summary>Whether it goes down.</summary>
    public bool IsFall => Letters < 0 || (Letters == 0 && Semitones < 0);

    /// <summary>Such as <c>minor third</c>, <c>augmented fourth</c>, <c>perfect fifth down</c>.</summary>
    public string Name
    {
        get
        {
            var rise = IsFall ? -this : this;
            var ordinal =
                rise.Letters < Ordinals.Length
                    ? Ordinals[rise.Letters]
                    : string.Create(CultureInfo.InvariantCulture, $"interval of {rise.Letters + 1} letters");
            return $"{rise.QualityWord()} {ordinal}{(IsFall ? " down" : "")}";
        }
    }

    /// <summary>The interval in the other direction.</summary>
    public static Interval operator -(Interval a) => new(-a.Letters, -a.Semitones);

    /// <summary>One interval after another.</summary>
    public static Interval operator +(Interval a, Interval b) =>
        new(a.Letters + b.Letters, a.Semitones + b.Semitones);

    /// <summary>Such as <c>m3</c>, <c>A4</c>, <c>-P5</c>; d, m, P, M, A for diminished to augmented.</summary>
    public override string ToString()
    {
        var rise = IsFall ? -this : this;
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{(IsFall ? "-" : "")}{rise.QualityLetters()}{rise.Letters + 1}"
        );
    }

    // Semitones beyond the perfect or major interval of the same letters.
    private int Excess() => Semitones - ((Letters / 7) * 12) - NoteName.NaturalSemitones[Letters % 7];

    // Above 0: times augmented; below 0: times diminished; 0: perfect, major or minor.
    private int Strain()
    {
        var excess = Excess();
        var lowestPlain = HasPerfect[Letters % 7] ? 0 : -1;
        return excess > 0 ? excess : Math.Min(0, excess - lowestPlain);
    }

    private string QualityLetters()
    {
        var strain = Strain();
        return strain == 0 ? Plain("P", "M", "m") : new string(strain > 0 ? 'A' : 'd', Math.Abs(strain));
    }

    private string QualityWord()
    {
        var strain = Strain();
        var times = Math.Abs(strain) switch
        {
            0 or 1 => "",
            2 => "doubly ",
            3 => "triply ",
            var more => string.Create(CultureInfo.InvariantCulture, $"{more} times "),
        };
        if (strain == 0)
        {
            return Plain("perfect", "major", "minor");
        }

        return times + (strain > 0 ? "augmented" : "diminished");
    }

    private string Plain(string perfect, string major, string minor)
    {
        var imperfect = Excess() == 0 ? major : minor;
        return HasPerfect[Letters % 7] ? perfect : imperfect;
    }
}
