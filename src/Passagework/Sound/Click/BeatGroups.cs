using System.Collections.Immutable;
using Passagework.Rhythm;

namespace Passagework.Sound.Click;

/// <summary>How the felt beats of a bar are grouped, for accents and backbeats.</summary>
public static class BeatGroups
{
    /// <summary>
    /// Twos where they go in, threes where only they do, 3 + 2 for five and twos with a last three for other odd numbers
    /// (common practice; other groupings of odd metres are as usual).
    /// </summary>
    public static ImmutableArray<int> Of(Meter meter)
    {
        var beats = meter.BeatsPerBar;
        return beats switch
        {
            1 => [1],
            5 => [3, 2],
            6 => [3, 3],
            _ when beats % 2 == 0 => [.. Enumerable.Repeat(2, beats / 2)],
            _ when beats % 3 == 0 => [.. Enumerable.Repeat(3, beats / 3)],
            _ => [.. Enumerable.Repeat(2, (beats - 3) / 2), 3],
        };
    }

    /// <summary>For each beat of the bar its place in its group and the size of that group.</summary>
    internal static ImmutableArray<(int Place, int Size)> Places(ImmutableArray<int> groups) =>
        [.. groups.SelectMany(size => Enumerable.Range(0, size).Select(place => (place, size)))];
}
