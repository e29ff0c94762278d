using System.Collections.Immutable;
using Passagework.Instrument;

namespace Passagework.Exercises;

/// <summary>What is played: a line with a fingering and a stroke plan.</summary>
/// <param name="Line">The line; <see cref="PlayedNote"/> holds the places, also those that the programme chose.</param>
/// <param name="Notes">One for each note of the line, in the same order.</param>
public sealed record Realization(Line Line, ImmutableArray<PlayedNote> Notes);

/// <summary>How one note is played.</summary>
/// <param name="Note">The note of the line.</param>
/// <param name="Place">String and fret.</param>
/// <param name="Finger">Fretting finger 1 to 4; 0 for an open string.</param>
/// <param name="Position">Fret of the first finger while the note sounds; 1 where nothing is fretted.</param>
/// <param name="Stroke">The picking hand's action.</param>
public sealed record PlayedNote(LineNote Note, Place Place, int Finger, int Position, Stroke Stroke)
{
    /// <summary>How the further tones of a chord are played, in the note's order; empty for a single note.</summary>
    public ImmutableArray<PlayedTone> With { get; init; } = [];

    /// <summary>The first string of a rake, from which the plectrum is dragged, muted, into the note; null for none.</summary>
    public int? RakedFrom { get; init; }

    /// <summary>The note and what sounds with it, from high to low.</summary>
    public IEnumerable<PlayedTone> Tones => With.IsEmpty ? [Highest] : With.Prepend(Highest);

    /// <summary>The note alone, without what sounds with it.</summary>
    internal PlayedTone Highest => new(new LineTone(Place, Note.Midi, Note.Pitch), Place, Finger, Stroke);

    /// <summary>Content equality.</summary>
    public bool Equals(PlayedNote? other) =>
        other is not null
        && (Place, Finger, Position) == (other.Place, other.Finger, other.Position)
        && (Stroke, RakedFrom) == (other.Stroke, other.RakedFrom)
        && Note.Equals(other.Note)
        && With.SequenceEqual(other.With);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Note, Place, Finger, Position, Stroke, RakedFrom);
}

/// <summary>How one tone of a chord is played.</summary>
/// <param name="Tone">The tone.</param>
/// <param name="Place">String and fret.</param>
/// <param name="Finger">Fretting finger 1 to 4; 0 for an open string. One finger on several tones lies across them.</param>
/// <param name="Stroke">The picking hand's action; the same for all tones of one brush of the plectrum.</param>
public readonly record struct PlayedTone(LineTone Tone, Place Place, int Finger, Stroke Stroke);
