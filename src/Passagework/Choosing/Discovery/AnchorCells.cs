using System.Collections.Immutable;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Instrument;

namespace Passagework.Choosing.Discovery;

/// <summary>
/// The cells from which anchors are taken: 3 to 8 notes, box 1 of A minor pentatonic, step 1, reach 3, up and down, mean of both
/// first strokes; cells wider than the path are left out.
/// </summary>
/// <remarks>
/// An anchor is the 10th and the 90th percentile of a raw measure, every length with equal weight: the least value at or below
/// which lie a tenth, or nine tenths, of the weight.
/// </remarks>
internal sealed class AnchorCells(CellJudge judge, Technique technique)
{
    private const double Low = 0.1;
    private const double High = 0.9;
    private const double Rounding = 1e-9;

    /// <summary>The space of one length.</summary>
    public CellSpace Space(int length) =>
        CellSpace.Usual(length) with
        {
            Layouts = [new Layout.Box(1, 5)],
            Directions = [Direction.UpAndDown],
            Picking = new PickingPlan { Technique = technique },
        };

    /// <summary>Measures of cells of one length: raw values by criterion, one array each, same order.</summary>
    /// <param name="length">Notes of a cell.</param>
    /// <param name="cells">The cells as offsets, those too wide included.</param>
    public double[][] Measure(int length, IEnumerable<int[]> cells)
    {
        var space = Space(length);
        var variant = new CellVariant(space, 0, 0, judge);
        var measurer = variant.NewMeasurer();
        var values = new List<double>[CellTake.Measures];
        for (var criterion = 0; criterion < values.Length; criterion++)
        {
            values[criterion] = [];
        }

        foreach (var cell in cells.Where(cell => Fits(cell, variant.Path.Length) && measurer.Measure(cell)))
        {
            for (var criterion = 0; criterion < values.Length; criterion++)
            {
                var sum = 0.0;
                foreach (var take in measurer.Takes)
                {
                    sum += take.Of(criterion);
                }

                values[criterion].Add(sum / measurer.Takes.Length);
            }
        }

        return Array.ConvertAll(values, list => list.ToArray());
    }

    /// <summary>All cells of a space that begin with given steps, in order.</summary>
    public static IEnumerable<int[]> All(CellSpace space, int firstStep)
    {
        var offsets = new int[space.Length];
        var steps = new int[space.Length];
        Array.Fill(steps, -space.Reach);
        steps[1] = firstStep;
        while (true)
        {
            for (var i = 1; i < steps.Length; i++)
            {
                offsets[i] = offsets[i - 1] + steps[i];
            }

            yield return offsets;
            var last = steps.Length - 1;
            while (last > 1 && steps[last] == space.Reach)
            {
                steps[last--] = -space.Reach;
            }

            if (last == 1)
            {
                yield break;
            }

            steps[last]++;
        }
    }

    /// <summary>Cells of a space drawn with equal chance until so many fit a path.</summary>
    public static IEnumerable<int[]> Drawn(CellSpace space, int count, int pathLength)
    {
        var chance = new SplitMix64((ulong)space.Length);
        for (var found = 0; found < count; )
        {
            var offsets = new int[space.Length];
            for (var i = 1; i < offsets.Length; i++)
            {
                var step = (int)(chance.NextUniform() * ((2 * space.Reach) + 1)) - space.Reach;
                offsets[i] = offsets[i - 1] + step;
            }

            if (Fits(offsets, pathLength))
            {
                found++;
                yield return offsets;
            }
        }
    }

    /// <summary>The 10th and 90th percentile of values that come in lists of equal weight.</summary>
    public static (double Low, double High) Percentiles(IReadOnlyList<double[]> lists)
    {
        var weighted = lists
            .SelectMany(list => list.Select(value => (Value: value, Weight: 1.0 / list.Length / lists.Count)))
            .OrderBy(entry => entry.Value);
        var (sum, low, high) = (0.0, double.NaN, double.NaN);
        foreach (var (value, weight) in weighted)
        {
            sum += weight;
            low = double.IsNaN(low) && sum >= Low - Rounding ? value : low;
            high = double.IsNaN(high) && sum >= High - Rounding ? value : high;
        }

        return (low, high);
    }

    private static bool Fits(int[] offsets, int pathLength) => offsets.Max() - offsets.Min() < pathLength;
}
