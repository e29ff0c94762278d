using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Rhythm;

namespace Passagework.Sound.Performance;

/// <summary>A line with every instant decided.</summary>
/// <param name="Events">What happens to the strings, in order of time.</param>
/// <param name="Times">Where notes, bars and beats are.</param>
/// <param name="Line">
/// All times through written behind one another, the count-in as an empty beginning: what a MIDI file of the same
/// performance holds.
/// </param>
/// <param name="Tempi">The tempi of that line.</param>
public sealed record TimedPerformance(
    ImmutableArray<StringEvent> Events,
    TimeMap Times,
    Realization Line,
    ImmutableArray<TempoChange> Tempi
)
{
    private const double Instant = 1e-6;

    /// <summary>The events of each note by its place in the notes of <see cref="Times"/>.</summary>
    /// <remarks>A rake or a brush comes before its note's onset, but after the onset before.</remarks>
    internal ILookup<int, StringEvent> EventsByNote()
    {
        var timed = Times.Notes;
        var passes = Enumerable.Range(0, timed.Length).ToLookup(i => timed[i].Note);
        return Events.ToLookup(e =>
            passes[e.Note ?? throw new System.Diagnostics.UnreachableException("All events have a note.")]
                .First(i => timed[i].OnsetSeconds >= e.Seconds - Instant)
        );
    }
}
