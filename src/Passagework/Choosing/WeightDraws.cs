using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Choosing;

/// <summary>Weights drawn evenly from all weights there are, or from those that keep the teacher's order.</summary>
/// <remarks>
/// Exponentials over their sum are uniform on the simplex. Sorted and handed out by the order they are uniform on the part
/// that keeps it; criteria the teacher weighs equally keep the order drawn among them. A weight of 0 stays 0: that
/// criterion is switched off.
/// </remarks>
internal sealed class WeightDraws
{
    private readonly ImmutableArray<int[]> _groups;
    private readonly double[] _drawn;
    private readonly double[] _sorted;

    public WeightDraws(CriterionWeights weights, bool keepsOrder)
    {
        // With no order all criteria in use are one group.
        _groups =
        [
            .. weights
                .Used.GroupBy(k => keepsOrder ? Math.Round(weights.Shares[k], 9) : 1)
                .OrderByDescending(group => group.Key)
                .Select(group => group.ToArray()),
        ];
        _drawn = new double[weights.Shares.Length];
        _sorted = new double[_groups.Sum(group => group.Length)];
    }

    /// <summary>Fills in the next weights.</summary>
    public void Next(ref SplitMix64 chance, Span<double> weights)
    {
        var (next, sum) = (0, 0.0);
        foreach (var group in _groups)
        {
            foreach (var k in group)
            {
                _drawn[k] = -Math.Log(1 - chance.NextUniform());
                _sorted[next++] = -_drawn[k];
                sum += _drawn[k];
            }
        }

        weights.Clear();
        Array.Sort(_sorted);
        next = 0;
        foreach (var group in _groups)
        {
            Array.Sort(group, (a, b) => _drawn[b].CompareTo(_drawn[a]));
            foreach (var k in group)
            {
                weights[k] = -_sorted[next++] / sum;
            }
        }
    }
}
