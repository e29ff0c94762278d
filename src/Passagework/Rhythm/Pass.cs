using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Rhythm;

/// <summary>Marked pulses of a stretch that repeats: group starts, or accents.</summary>
/// <param name="Length">Pulses until it repeats, at least 1.</param>
/// <param name="Marks">Ascending, each below the length.</param>
internal sealed record Pass(int Length, ImmutableArray<int> Marks)
{
    // Chosen by us: far beyond any exercise, and small enough to count through.
    private const int MostPulses = 1_000_000;

    /// <summary>
    /// Starts of the groups: one group where all have the same length, else all of them; null where there are none or a
    /// length is no whole number of pulses.
    /// </summary>
    public static Pass? OfStarts(IReadOnlyList<GroupShape> groups)
    {
        if (WholeLengths(groups) is not { } lengths)
        {
            return null;
        }

        return lengths.All(length => length == lengths[0])
            ? new Pass(lengths[0], [0])
            : new Pass(lengths.Sum(), Starts(lengths));
    }

    /// <summary>
    /// Accents of all groups, one after another; null where there are none or an accent or a length is no whole number of
    /// pulses.
    /// </summary>
    public static Pass? OfAccents(IReadOnlyList<GroupShape> groups)
    {
        if (WholeLengths(groups) is not { } lengths || !groups.All(AccentsArePulses))
        {
            return null;
        }

        var marks = groups
            .Zip(Starts(lengths))
            .SelectMany(pair =>
                pair.First.Accents.DefaultIfEmpty().Select(accent => pair.Second + (int)accent.Numerator)
            );
        return new Pass(lengths.Sum(), [.. marks.Distinct().Order()]);
    }

    /// <summary>How many places of a beat of <paramref name="places"/> pulses the marks visit until all repeats.</summary>
    public int PlacesVisited(int places)
    {
        // A mark comes back to every place that differs from its own by a multiple of gcd(length, places).
        var step = (int)WholeNumbers.Gcd(Length, places);
        return Marks.Select(mark => mark % step).Distinct().Count() * (places / step);
    }

    private static ImmutableArray<int>? WholeLengths(IReadOnlyList<GroupShape> groups)
    {
        var most = Fraction.Of(MostPulses);
        var whole = groups.All(group =>
            group.Pulses.IsWhole && group.Pulses > Fraction.Zero && group.Pulses <= most
        );
        if (!whole || groups.Count == 0 || groups.Sum(group => group.Pulses.Numerator) > MostPulses)
        {
            return null;
        }

        return [.. groups.Select(group => (int)group.Pulses.Numerator)];
    }

    private static bool AccentsArePulses(GroupShape group) =>
        group.Accents.All(accent => accent.IsWhole && accent >= Fraction.Zero && accent < group.Pulses);

    private static ImmutableArray<int> Starts(ImmutableArray<int> lengths)
    {
        var starts = ImmutableArray.CreateBuilder<int>(lengths.Length);
        var start = 0;
        foreach (var length in lengths)
        {
            starts.Add(start);
            start += length;
        }

        return starts.MoveToImmutable();
    }
}
