using System.Numerics;

namespace Passagework.Hands;

/// <summary>The even load of a planned line under every joint draw of the parameters, fingering and strokes held.</summary>
internal static class EvenLoadDraws
{
    /// <summary>One value for each draw; empty when neither hand is asked anything.</summary>
    /// <param name="planned">The line.</param>
    /// <param name="draws">The player's draws.</param>
    /// <param name="evenness">How evenly the fingers share the notes, 0 to 1, which no draw changes.</param>
    public static double[] Of(PlannedLine planned, ParameterDraws draws, double evenness)
    {
        var (fretting, picking) = (planned.Demands.Fretting, planned.Demands.Picking);
        if (fretting.AsksNothing && picking.AsksNothing)
        {
            return [];
        }

        var less = new double[ParameterDraws.Count];
        var more = new double[ParameterDraws.Count];
        var (frettingTimes, pickingTimes) = (Times(fretting, draws), Times(picking, draws));
        foreach (var (pair, times) in Pairs(fretting, picking))
        {
            Add(frettingTimes[pair.Fretting], pickingTimes[pair.Picking], times, (less, more));
        }

        return [.. less.Zip(more, (least, most) => evenness * least / most)];
    }

    // Transitions with the same two demands count together.
    private static Dictionary<(int Fretting, int Picking), int> Pairs(LoadList fretting, LoadList picking)
    {
        var pairs = new Dictionary<(int Fretting, int Picking), int>();
        for (var k = 0; k < fretting.Count; k++)
        {
            var pair = (fretting.ClassOf[k], picking.ClassOf[k]);
            pairs[pair] = pairs.GetValueOrDefault(pair) + 1;
        }

        return pairs;
    }

    private static double[][] Times(LoadList list, ParameterDraws draws) =>
        [
            .. list.Classes.Select(known =>
            {
                var times = new double[ParameterDraws.Count];
                known.Demand.AddTo(times, draws);
                return times;
            }),
        ];

    private static void Add(
        double[] fretting,
        double[] picking,
        int times,
        (double[] Less, double[] More) sums
    )
    {
        for (var d = 0; d < ParameterDraws.Count; d += Vector<double>.Count)
        {
            var (left, right) = (new Vector<double>(fretting, d), new Vector<double>(picking, d));
            (new Vector<double>(sums.Less, d) + (Vector.Min(left, right) * times)).CopyTo(sums.Less, d);
            (new Vector<double>(sums.More, d) + (Vector.Max(left, right) * times)).CopyTo(sums.More, d);
        }
    }
}
