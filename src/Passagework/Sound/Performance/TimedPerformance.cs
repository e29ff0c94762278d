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
);
