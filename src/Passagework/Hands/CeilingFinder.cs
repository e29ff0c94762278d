using static Passagework.Hands.HandConstants;

namespace Passagework.Hands;

/// <summary>Finds ceilings in closed form: load is proportional to tempo, so the ceiling is tempo over load.</summary>
internal static class CeilingFinder
{
    private const int LowRank = 20;
    private const int HighRank = 181;

    /// <summary>The ceiling of a line for a player, with its range over the joint draws.</summary>
    public static Ceiling Of(LineDemands demands, HandParameters parameters)
    {
        var plain = Plain(demands, parameters);
        return plain.Least is null ? plain : plain with { Range = RangeOf(demands, parameters.Draws) };
    }

    /// <summary>The ceiling at the plain parameter values, without a range.</summary>
    public static Ceiling Plain(LineDemands demands, HandParameters parameters)
    {
        var basis = parameters.Basis;
        return new Ceiling(
            FromLoad(Math.Max(LoadOf(demands.Fretting, basis), LoadOf(demands.Carried, basis))),
            FromLoad(LoadOf(demands.Picking, basis)),
            FromLoad(LoadOf(demands.Together, basis)),
            null
        );
    }

    private static double LoadOf(LoadList list, double[] basis) =>
        list.AsksNothing ? 0 : WindowedLoad.Of(list.Loads(basis), WindowMoves, WindowTolerance);

    private static double? FromLoad(double load) => load > 0 ? 1 / load : null;

    private static CeilingRange RangeOf(LineDemands demands, ParameterDraws draws)
    {
        var fretting = DrawnLoads.Of(demands.Fretting, draws);
        var carried = DrawnLoads.Of(demands.Carried, draws);
        var picking = DrawnLoads.Of(demands.Picking, draws);
        var together = DrawnLoads.Of(demands.Together, draws);
        var least = new double[ParameterDraws.Count];
        Span<int> wins = [0, 0, 0];
        for (var d = 0; d < least.Length; d++)
        {
            var fretted = Math.Max(fretting[d], carried[d]);
            var most = Math.Max(fretted, Math.Max(picking[d], together[d]));
            least[d] = 1 / most;
            wins[(int)LimitOf(most, fretted, picking[d])]++;
        }

        var sorted = least.Order().ToArray();
        double count = least.Length;
        return new CeilingRange(
            sorted[LowRank - 1],
            sorted[HighRank - 1],
            wins[0] / count,
            wins[1] / count,
            wins[2] / count,
            [.. least]
        );
    }

    // The first named of equal ones.
    private static Limit LimitOf(double most, double fretting, double picking)
    {
        if (fretting == most)
        {
            return Limit.Fretting;
        }

        return picking == most ? Limit.Picking : Limit.Together;
    }
}
