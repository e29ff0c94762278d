using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Exercises;

/// <summary>The notes of an exercise in order, placed on the neck where the recipe places them.</summary>
/// <param name="Recipe">The idea that the line came from.</param>
/// <param name="Notes">The notes, in order of onset, one at a time; never empty.</param>
/// <param name="Rests">Silent stretches, in order; they touch neither each other nor count as notes.</param>
/// <param name="End">Where the last note or rest ends, as a fraction of a whole note after the first bar line.</param>
public sealed record Line(
    Recipe Recipe,
    ImmutableArray<LineNote> Notes,
    ImmutableArray<Rest> Rests,
    Fraction End
);

/// <summary>One note of a line.</summary>
public sealed record LineNote
{
    /// <summary>Counted from 0; rests do not count.</summary>
    public required int Index { get; init; }

    /// <summary>String and fret; null when only the pitch is known and the programme chooses.</summary>
    public required Place? Place { get; init; }

    /// <summary>The MIDI key that sounds.</summary>
    public required int Midi { get; init; }

    /// <summary>The sounding pitch, spelled.</summary>
    public required SpelledPitch Pitch { get; init; }

    /// <summary>The further tones of a chord, from high to low; the note itself is its highest. Empty for a single note.</summary>
    public ImmutableArray<LineTone> With { get; init; } = [];

    /// <summary>Written start, as a fraction of a whole note after the first bar line.</summary>
    public required Fraction Onset { get; init; }

    /// <summary>Written length, as a fraction of a whole note.</summary>
    public required Fraction Duration { get; init; }

    /// <summary>Group number from 0; null for a note added by an ending.</summary>
    public int? Group { get; init; }

    /// <summary>Place among the entries of its group, rests counted, from 0; null with the group.</summary>
    public int? InGroup { get; init; }

    /// <summary>Whether the note is accented.</summary>
    public bool Accent { get; init; }

    /// <summary>How the note is reached.</summary>
    public Slur Slur { get; init; }

    /// <summary>Where the note ends.</summary>
    public Fraction End => Onset + Duration;

    /// <summary>The note and what sounds with it, from high to low.</summary>
    public IEnumerable<LineTone> Tones => With.Prepend(new LineTone(Place, Midi, Pitch));

    /// <summary>Content equality.</summary>
    public bool Equals(LineNote? other) =>
        other is not null
        && (Index, Place, Midi, Pitch, Onset, Duration)
            == (other.Index, other.Place, other.Midi, other.Pitch, other.Onset, other.Duration)
        && (Group, InGroup, Accent, Slur) == (other.Group, other.InGroup, other.Accent, other.Slur)
        && With.SequenceEqual(other.With);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Index, Place, Midi, Onset, Duration);
}

/// <summary>One tone of a chord.</summary>
/// <param name="Place">String and fret; null when only the pitch is known and the programme chooses.</param>
/// <param name="Midi">The MIDI key that sounds.</param>
/// <param name="Pitch">The sounding pitch, spelled.</param>
public readonly record struct LineTone(Place? Place, int Midi, SpelledPitch Pitch);

/// <summary>A silent stretch of a line.</summary>
/// <param name="Onset">Written start, as a fraction of a whole note after the first bar line.</param>
/// <param name="Duration">Written length, as a fraction of a whole note.</param>
public readonly record struct Rest(Fraction Onset, Fraction Duration);
