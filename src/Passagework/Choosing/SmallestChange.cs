using System.Collections.Immutable;

namespace Passagework.Choosing;

/// <summary>The nearest weights at which a rival draws level with the leader.</summary>
/// <param name="Rival">Who draws level.</param>
/// <param name="Weights">Those weights; not below 0, summing to 1.</param>
/// <param name="Length">How far they lie from the present ones (root of the sum of squares).</param>
public sealed record SmallestChange(int Rival, ImmutableArray<double> Weights, double Length)
{
    private const double LongestMultiplier = 1e15;

    /// <summary>The smallest change that costs the leader its place; null where no weights do.</summary>
    public static SmallestChange? Of(Choice choice)
    {
        var leader = Ranking.Of(choice).Leader;
        return Enumerable
            .Range(0, choice.Count)
            .Where(rival => rival != leader)
            .Select(rival => Between(choice, leader, rival))
            .OfType<SmallestChange>()
            .MinBy(change => change.Length);
    }

    /// <summary>The smallest change at which a rival draws level; null where no weights put it ahead.</summary>
    /// <remarks>
    /// Least |x − w|² with Σx = 1, x ≥ 0 and d·x = 0, d the differences of the values. For a multiplier λ the best x is
    /// the point of the simplex nearest to w − λd, and d·x falls as λ grows: λ is found by halving. Where no bound is
    /// met this is the closed form −D q/|q|², q = d less its mean. Criteria of weight 0 stay there.
    /// </remarks>
    public static SmallestChange? Between(Choice choice, int leader, int rival)
    {
        var used = choice.Weights.Used;
        double[] now = [.. used.Select(k => choice.Weights.Shares[k])];
        double[] lead =
        [
            .. used.Select(k => choice.Table.Counted(leader, k) - choice.Table.Counted(rival, k)),
        ];
        if (lead.Min() > -Ranking.Tolerance)
        {
            return null;
        }

        var level = Level(now, lead);
        var weights = new double[choice.Weights.Shares.Length];
        for (var i = 0; i < used.Length; i++)
        {
            weights[used[i]] = level[i];
        }

        return new SmallestChange(
            rival,
            [.. weights],
            Math.Sqrt(now.Zip(level, (x, y) => (x - y) * (x - y)).Sum())
        );
    }

    private static double[] Level(double[] now, double[] lead)
    {
        double[] At(double multiplier) => NearestWeights([.. now.Zip(lead, (w, d) => w - (multiplier * d))]);
        double LeadAt(double multiplier) => At(multiplier).Zip(lead, (w, d) => w * d).Sum();

        var (low, high) = (0.0, 1.0);
        while (LeadAt(high) > 0 && high < LongestMultiplier)
        {
            (low, high) = (high, high * 2);
        }

        // Until no number lies between the two.
        for (var middle = Between(low, high); low < middle && middle < high; middle = Between(low, high))
        {
            (low, high) = LeadAt(middle) > 0 ? (middle, high) : (low, middle);
        }

        return At(high);
    }

    private static double Between(double low, double high) => low + ((high - low) / 2);

    // The point of the simplex nearest to a point: all coordinates less one amount, cut off at 0
    // (M. Held, P. Wolfe and H. P. Crowder, "Validation of subgradient optimization", 1974).
    private static double[] NearestWeights(double[] point)
    {
        double[] sorted = [.. point.OrderDescending()];
        var (sum, amount) = (0.0, 0.0);
        for (var i = 0; i < sorted.Length; i++)
        {
            sum += sorted[i];
            if (sorted[i] > (sum - 1) / (i + 1))
            {
                amount = (sum - 1) / (i + 1);
            }
        }

        return Array.ConvertAll(point, x => Math.Max(0, x - amount));
    }
}
