using System.Collections.Immutable;

namespace Passagework.Choosing;

/// <summary>Which candidates no other beats on everything that counts.</summary>
/// <remarks>
/// One dominates another if it is at least as good on every criterion of weight above 0 and better on one. Nothing is
/// known about a missing value, so a candidate with one neither dominates nor is dominated.
/// </remarks>
public static class ParetoFront
{
    /// <summary>For each candidate one on the front that dominates it, the best by plain sum; null for those on the front.</summary>
    /// <remarks>
    /// Sorted by sum, then by the values in turn, a candidate comes after all that dominate it, so it is compared with
    /// the front found so far only.
    /// </remarks>
    public static ImmutableArray<int?> Dominators(Choice choice)
    {
        var used = choice.Weights.Used;
        var rows = new double[choice.Count][];
        for (var a = 0; a < rows.Length; a++)
        {
            rows[a] = [.. used.Select(k => choice.Table.Counted(a, k))];
        }

        var complete = Enumerable
            .Range(0, rows.Length)
            .Where(a => !used.Any(k => choice.Table.IsMissing(a, k)));
        var dominators = new int?[rows.Length];
        var front = new List<int>();
        foreach (var a in complete.OrderByDescending(a => rows[a], Comparer<double[]>.Create(BySum)))
        {
            var above = front.FindIndex(b => Dominates(rows[b], rows[a]));
            if (above >= 0)
            {
                dominators[a] = front[above];
            }
            else
            {
                front.Add(a);
            }
        }

        return [.. dominators];
    }

    private static int BySum(double[] a, double[] b)
    {
        var order = a.Sum().CompareTo(b.Sum());
        return order != 0 ? order : a.AsSpan().SequenceCompareTo(b);
    }

    /// <summary>Whether one row is at least as good as another in everything and better in something.</summary>
    internal static bool Dominates(double[] a, double[] b)
    {
        var isBetter = false;
        for (var k = 0; k < a.Length; k++)
        {
            if (a[k] < b[k])
            {
                return false;
            }

            isBetter |= a[k] > b[k];
        }

        return isBetter;
    }
}
