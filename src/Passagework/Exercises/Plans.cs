using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Exercises;

/// <summary>Note values, metre, swing and tempo.</summary>
public sealed record RhythmPlan
{
    /// <summary>Pulses per felt beat, 1 to 8.</summary>
    public int NotesPerBeat { get; init; } = 4;

    /// <summary>Note lengths as fractions of a whole note, repeated through the line; empty for one pulse each.</summary>
    public ImmutableArray<Fraction> Pattern { get; init; } = [];

    /// <summary>The metre.</summary>
    public Meter Meter { get; init; }

    /// <summary>How unevenly pairs of pulses are played.</summary>
    public Swing Swing { get; init; }

    /// <summary>When the line begins, as a fraction of a whole note after the first bar line.</summary>
    public Fraction StartOffset { get; init; }

    /// <summary>Felt beats per minute; null when no tempo is asked for.</summary>
    public double? TempoBpm { get; init; }

    /// <summary>Length of one pulse as a fraction of a whole note.</summary>
    public Fraction Pulse => Meter.Beat / Fraction.Of(NotesPerBeat);

    /// <summary>Content equality.</summary>
    public bool Equals(RhythmPlan? other) =>
        other is not null
        && (NotesPerBeat, Meter, Swing, StartOffset, TempoBpm)
            == (other.NotesPerBeat, other.Meter, other.Swing, other.StartOffset, other.TempoBpm)
        && Pattern.SequenceEqual(other.Pattern);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(NotesPerBeat, Meter, Swing, StartOffset);
}

/// <summary>What the picking hand is told.</summary>
public sealed record PickingPlan
{
    /// <summary>How strokes follow one another.</summary>
    public Technique Technique { get; init; } = Technique.Alternate;

    /// <summary>The first stroke.</summary>
    public FirstStroke First { get; init; } = FirstStroke.Down;

    /// <summary>Which fingers take turns when the technique is fingers.</summary>
    public FingerOrder Fingers { get; init; } = FingerOrder.Pima;
}

/// <summary>How strokes follow one another.</summary>
public enum Technique
{
    /// <summary>Strictly down and up whatever the strings; begins again after a rest of a beat.</summary>
    Alternate,

    /// <summary>Down on even pulses of the bar, up on odd ones; silent passes over rests and slurs.</summary>
    Metric,

    /// <summary>Down-strokes only.</summary>
    AllDown,

    /// <summary>Up-strokes only.</summary>
    AllUp,

    /// <summary>Alternate on a string, in the direction of the crossing between strings.</summary>
    Economy,

    /// <summary>Strokes as economy; runs of one note per string are one movement.</summary>
    Sweep,

    /// <summary>A drag through muted strings into the note.</summary>
    Rake,

    /// <summary>Plectrum and fingers.</summary>
    Hybrid,

    /// <summary>Fingers only.</summary>
    Fingers,

    /// <summary>Strokes on string changes and repeated notes, slurs elsewhere.</summary>
    Legato,

    /// <summary>Any stroke anywhere; the programme chooses.</summary>
    Free,
}

/// <summary>The first stroke of a line.</summary>
public enum FirstStroke
{
    /// <summary>A down-stroke.</summary>
    Down,

    /// <summary>An up-stroke.</summary>
    Up,

    /// <summary>The cheaper of the two.</summary>
    Best,
}

/// <summary>Which fingers of the picking hand take turns.</summary>
public enum FingerOrder
{
    /// <summary>Thumb and three fingers, chosen by the programme.</summary>
    Pima,

    /// <summary>Index and middle, strictly in turn.</summary>
    IndexMiddle,

    /// <summary>Middle and ring, strictly in turn.</summary>
    MiddleRing,

    /// <summary>Thumb and index, strictly in turn.</summary>
    ThumbIndex,
}

/// <summary>What the fretting hand is told.</summary>
public sealed record FrettingPlan
{
    /// <summary>Notes that a teacher has fixed.</summary>
    public ImmutableArray<Lock> Locks { get; init; } = [];

    /// <summary>Fingers, 1 to 4, that this exercise never uses; a lock on a note beats it.</summary>
    public ImmutableArray<int> Avoid { get; init; } = [];

    /// <summary>Whether a slurred move along one string may be a slide.</summary>
    public bool SlidesAtShifts { get; init; }

    /// <summary>Content equality.</summary>
    public bool Equals(FrettingPlan? other) =>
        other is not null
        && SlidesAtShifts == other.SlidesAtShifts
        && Locks.SequenceEqual(other.Locks)
        && Avoid.SequenceEqual(other.Avoid);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Locks.Length, Avoid.Length, SlidesAtShifts);
}

/// <summary>What a teacher has fixed about one note; null leaves that part free.</summary>
/// <param name="Note">Index of the note in the line, from 0; rests do not count.</param>
/// <param name="Finger">Finger of the fretting hand, 1 to 4; 0 asks for the open string.</param>
/// <param name="String">String number.</param>
/// <param name="Position">Fret of the first finger.</param>
/// <param name="Stroke">The picking hand's action.</param>
public sealed record Lock(
    int Note,
    int? Finger = null,
    int? String = null,
    int? Position = null,
    Stroke? Stroke = null
);

/// <summary>The picking hand's action for one note.</summary>
public enum Stroke
{
    /// <summary>No stroke: the note is slurred.</summary>
    None,

    /// <summary>Plectrum towards the floor.</summary>
    Down,

    /// <summary>Plectrum towards the ceiling.</summary>
    Up,

    /// <summary>Thumb.</summary>
    Thumb,

    /// <summary>Index finger.</summary>
    Index,

    /// <summary>Middle finger.</summary>
    Middle,

    /// <summary>Ring finger.</summary>
    Ring,
}
