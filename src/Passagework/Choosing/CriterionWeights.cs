using System.Collections.Immutable;
using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Choosing;

/// <summary>How much each criterion counts: not below 0, summing to 1.</summary>
public sealed class CriterionWeights
{
    private CriterionWeights(ImmutableArray<double> shares)
    {
        Shares = shares;
        Used = [.. Enumerable.Range(0, shares.Length).Where(k => shares[k] > 0)];
    }

    /// <summary>The weights, in the order of the criteria.</summary>
    public ImmutableArray<double> Shares { get; }

    /// <summary>Criteria with a weight above 0, ascending.</summary>
    public ImmutableArray<int> Used { get; }

    /// <summary>Weights in proportion to what was given; only ratios count.</summary>
    /// <exception cref="ArgumentException">More or fewer numbers than criteria.</exception>
    public static Outcome<CriterionWeights> Of(ImmutableArray<string> criteria, ImmutableArray<double> given)
    {
        if (criteria.Length != given.Length)
        {
            throw new ArgumentException("One weight per criterion.", nameof(given));
        }

        for (var k = 0; k < given.Length; k++)
        {
            if (!double.IsFinite(given[k]) || given[k] < 0)
            {
                var written = given[k].ToString(CultureInfo.InvariantCulture);
                return new Fault($"a weight of {written}", criteria[k], "a number not below 0");
            }
        }

        var most = given.DefaultIfEmpty().Max();
        return most == 0
            ? new Fault("all weights are 0", "weights", "at least one above 0")
            : new CriterionWeights(Scaled(given.Select(weight => weight / most)));
    }

    /// <summary>
    /// The mean of all weights that respect an order from the most to the least important (rank-order centroid):
    /// (1/n) Σ_{j≥i} 1/j. Steep.
    /// </summary>
    public static ImmutableArray<double> Centroid(int count) =>
        [
            .. Enumerable
                .Range(1, count)
                .Select(i => Enumerable.Range(i, count - i + 1).Sum(j => 1.0 / j) / count),
        ];

    /// <summary>For "about equal, in this order" (rank sum): 2(n+1−i)/(n(n+1)).</summary>
    public static ImmutableArray<double> RankSum(int count) =>
        [.. Enumerable.Range(1, count).Select(i => 2.0 * (count + 1 - i) / (count * (count + 1.0)))];

    /// <summary>The same weights with one of them changed and the rest kept in proportion.</summary>
    /// <remarks>Where the rest is 0 it is shared equally.</remarks>
    public CriterionWeights With(int criterion, double weight)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(weight, 0);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(weight, 1);
        var rest = Rest(criterion);
        return new CriterionWeights([
            .. Shares.Select((_, k) => k == criterion ? weight : (1 - weight) * rest[k]),
        ]);
    }

    /// <summary>
    /// The step on <paramref name="to"/> that is worth as much as a step on <paramref name="from"/>: the trade-off
    /// to lay before a teacher. Infinite where <paramref name="to"/> does not count.
    /// </summary>
    public double Worth(double step, int from, int to) => step * Shares[from] / Shares[to];

    /// <summary>The other criteria's weights, scaled to 1 without this one.</summary>
    internal ImmutableArray<double> Rest(int criterion)
    {
        var left = Shares.Where((_, k) => k != criterion).Sum();
        return left > 0
            ? [.. Shares.Select((share, k) => k == criterion ? 0 : share / left)]
            : [.. Shares.Select((_, k) => k == criterion ? 0 : 1.0 / (Shares.Length - 1))];
    }

    private static ImmutableArray<double> Scaled(IEnumerable<double> weights)
    {
        double[] all = [.. weights];
        var sum = all.Sum();
        return [.. all.Select(weight => weight / sum)];
    }
}
