using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>One written note or rest: a whole one, or a part tied to others.</summary>
internal sealed record ScoreNote
{
    /// <summary>What is played; null for a rest.</summary>
    public PlayedNote? Note { get; init; }

    /// <summary>As a fraction of a whole note after the first bar line.</summary>
    public required Fraction Onset { get; init; }

    /// <summary>Sounding length as a fraction of a whole note.</summary>
    public required Fraction Length { get; init; }

    /// <summary>Value of the head.</summary>
    public required NoteValue Value { get; init; }

    /// <summary>The tuplet around it; null for none.</summary>
    public ScoreSpan? Tuplet { get; init; }

    /// <summary>Whether it is tied to the part before.</summary>
    public bool TiedBack { get; init; }

    /// <summary>Whether it is tied to the part after.</summary>
    public bool TiedOn { get; init; }

    /// <summary>Whether the rest is a whole empty bar.</summary>
    public bool WholeBar { get; init; }

    /// <summary>Notes with the same number may share a beam.</summary>
    public Fraction BeamGroup { get; init; }

    /// <summary>The part of the beat at whose ends the second and finer beams stop; null inside a tuplet.</summary>
    public BeamPart? BeamPart { get; init; }
}

/// <summary>A part of a beat that finer beams keep visible.</summary>
/// <param name="Start">As a fraction of a whole note after the first bar line.</param>
/// <param name="Always">Whether sixteenths show it too (a third of a dotted beat); else only shorter notes (half a beat).</param>
internal readonly record struct BeamPart(Fraction Start, bool Always);

/// <summary>Part of a bar: plain, or a tuplet of <c>Actual</c> units in the time of <c>Normal</c>.</summary>
/// <param name="Start">As a fraction of a whole note after the bar line.</param>
/// <param name="End">As a fraction of a whole note after the bar line.</param>
/// <param name="Actual">Units written.</param>
/// <param name="Normal">Units whose time they take; the same number where nothing is bracketed.</param>
internal sealed record ScoreSpan(Fraction Start, Fraction End, int Actual, int Normal)
{
    public bool IsPlain => Actual == Normal;

    /// <summary>Written time for sounding time.</summary>
    public Fraction Ratio => Fraction.Of(Actual, Normal);

    /// <summary>The written unit, as a fraction of a whole note.</summary>
    public Fraction Unit => (End - Start) / Fraction.Of(Normal);
}
