using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Notation;

/// <summary>One pitched note as it stands in a file.</summary>
internal sealed class ReadNote
{
    /// <summary>Index of its bar in the part.</summary>
    public required int Bar { get; init; }

    /// <summary>After the bar line, as a fraction of a whole note.</summary>
    public required Fraction InBar { get; init; }

    /// <summary>After the first bar line of the part, in the order played.</summary>
    public Fraction Onset { get; set; }

    public required Fraction Length { get; set; }

    public required string Voice { get; init; }

    public required int Staff { get; init; }

    /// <summary>What sounds.</summary>
    public required SpelledPitch Pitch { get; init; }

    public int? Group { get; init; }

    public NoteSigns Signs { get; set; }

    /// <summary>What begins with it in the same voice, from high to low.</summary>
    public List<ReadNote> Chord { get; private set; } = [];

    /// <summary>The note and what begins with it, from high to low.</summary>
    public IEnumerable<ReadNote> Tones => Chord.Prepend(this);

    public Fraction End => Onset + Length;

    /// <summary>The same note in another turn of a repeat.</summary>
    public ReadNote At(Fraction onset)
    {
        var copy = (ReadNote)MemberwiseClone();
        copy.Onset = onset;
        copy.Chord = [];
        return copy;
    }

    /// <summary>The same note with what another staff says about it.</summary>
    public ReadNote With(NoteSigns signs) =>
        new()
        {
            Bar = Bar,
            InBar = InBar,
            Onset = Onset,
            Length = Length,
            Voice = Voice,
            Staff = Staff,
            Pitch = Pitch,
            Group = Group,
            Signs = signs,
        };
}

/// <summary>What stands at a note besides pitch and length.</summary>
internal readonly record struct NoteSigns
{
    public int? String { get; init; }

    public int? Fret { get; init; }

    public int? Finger { get; init; }

    public Stroke? Stroke { get; init; }

    /// <summary>What ends at the note: how it is reached.</summary>
    public Slur Into { get; init; }

    /// <summary>What begins at the note: how the next is reached.</summary>
    public Slur OutOf { get; init; }

    /// <summary>Whether a curve begins, which may be a phrase or a slur.</summary>
    public bool Curve { get; init; }

    public bool Accent { get; init; }

    public bool TiedBack { get; init; }

    public bool TiedOn { get; init; }

    /// <summary>These signs, with another staff's where these have none.</summary>
    public NoteSigns Or(NoteSigns other) =>
        this with
        {
            String = String ?? other.String,
            Fret = Fret ?? other.Fret,
            Finger = Finger ?? other.Finger,
            Stroke = Stroke ?? other.Stroke,
            Into = Into == Slur.None ? other.Into : Into,
            OutOf = OutOf == Slur.None ? other.OutOf : OutOf,
            Accent = Accent || other.Accent,
        };
}
