using System.Collections.Immutable;

namespace Passagework.Choosing;

/// <summary>What a choice may cost at worst when only the order of the weights is known.</summary>
public static class Regret
{
    /// <summary>
    /// For each candidate the largest distance to the best score over all weights that keep an order of criteria, most
    /// important first: reached where the first r of them count equally and the rest not at all.
    /// </summary>
    public static ImmutableArray<double> Greatest(ChoiceTable table, IReadOnlyList<int> order)
    {
        var sums = new double[table.Candidates.Length];
        var regret = new double[sums.Length];
        for (var r = 0; r < order.Count; r++)
        {
            for (var a = 0; a < sums.Length; a++)
            {
                sums[a] += table.Counted(a, order[r]);
            }

            var best = sums.Max();
            for (var a = 0; a < sums.Length; a++)
            {
                regret[a] = Math.Max(regret[a], (best - sums[a]) / (r + 1));
            }
        }

        return [.. regret];
    }
}
