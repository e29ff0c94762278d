using System.Collections.Immutable;
using Passagework.Hands;

namespace Passagework.Engraving.Strips;

/// <summary>How many milliseconds half a strip is high; the same for all systems and both hands.</summary>
internal readonly record struct StripScale(double Ms)
{
    // A little air beyond; a limit far beyond every demand is left off rather than flatten them.
    private const double Air = 1.04;
    private const double MostTimesDemand = 3;

    public static StripScale Of(ImmutableArray<MoveDemand> demands, MoveTimes times)
    {
        var hardest = demands.Max(demand => Math.Max(demand.FrettingMs ?? 0, demand.PickingMs ?? 0));
        var limits = times.Fretting.OfType<double>().Order().ToList();
        var usual = limits.Count == 0 ? 0 : limits[limits.Count / 2];
        var ms = Air * Math.Max(hardest, usual);
        return new StripScale(hardest > 0 ? Math.Min(ms, MostTimesDemand * hardest) : Math.Max(ms, 1));
    }
}
