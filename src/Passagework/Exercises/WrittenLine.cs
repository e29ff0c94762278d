using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Exercises;

/// <summary>A line written entry by entry.</summary>
public sealed record WrittenLine(ImmutableArray<WrittenEntry> Entries)
{
    /// <summary>Content equality.</summary>
    public bool Equals(WrittenLine? other) => other is not null && Entries.SequenceEqual(other.Entries);

    /// <inheritdoc/>
    public override int GetHashCode() => Entries.Length;
}

/// <summary>One entry of a written line: a note at a place, a pitch whose place is free, or a rest.</summary>
public sealed record WrittenEntry
{
    /// <summary>Where the note is fretted; null for a rest or a pitch without a place.</summary>
    public Place? Place { get; init; }

    /// <summary>What sounds, when no place is written.</summary>
    public SpelledPitch? Pitch { get; init; }

    /// <summary>What sounds with it, struck at once; places where the entry has a place, else pitches.</summary>
    public ImmutableArray<WrittenTone> With { get; init; } = [];

    /// <summary>Length as a fraction of a whole note, above 0.</summary>
    public required Fraction Duration { get; init; }

    /// <summary>Group number; null leaves it to the beat.</summary>
    public int? Group { get; init; }

    /// <summary>Whether the note is accented.</summary>
    public bool Accent { get; init; }

    /// <summary>How the note is reached when it is not struck.</summary>
    public Slur Slur { get; init; }

    /// <summary>Whether the entry is a rest.</summary>
    public bool IsRest => Place is null && Pitch is null;

    /// <summary>Content equality.</summary>
    public bool Equals(WrittenEntry? other) =>
        other is not null
        && (Place, Pitch, Duration, Group, Accent, Slur)
            == (other.Place, other.Pitch, other.Duration, other.Group, other.Accent, other.Slur)
        && With.SequenceEqual(other.With);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Place, Pitch, Duration, Group, Accent, Slur);
}

/// <summary>A further tone of a chord: a place, or a pitch whose place is free.</summary>
/// <param name="Place">Where it is fretted; null for a pitch.</param>
/// <param name="Pitch">What sounds, when no place is written.</param>
public readonly record struct WrittenTone(Place? Place, SpelledPitch? Pitch = null);

/// <summary>How a note is reached.</summary>
public enum Slur
{
    /// <summary>It is struck.</summary>
    None,

    /// <summary>Without a stroke: a hammer-on where it rises, else a pull-off; a slide where that is allowed and quicker.</summary>
    Slurred,

    /// <summary>By a finger coming down.</summary>
    Hammer,

    /// <summary>By a finger leaving the string.</summary>
    Pull,

    /// <summary>By the same finger moving along the string.</summary>
    Slide,
}
