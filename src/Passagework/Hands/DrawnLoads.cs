using System.Numerics;
using static Passagework.Hands.HandConstants;

namespace Passagework.Hands;

/// <summary>The windowed load of a list under every joint draw of the parameters.</summary>
internal static class DrawnLoads
{
    /// <summary>One windowed load at one pulse a second for each draw; all 0 for a list that asks nothing.</summary>
    public static double[] Of(LoadList list, ParameterDraws draws)
    {
        var results = new double[ParameterDraws.Count];
        if (list.AsksNothing)
        {
            return results;
        }

        var power = WindowedLoad.Power(WindowMoves, WindowTolerance);
        var raised = Raised(list, draws, power);
        var width = Math.Min(WindowMoves, list.Count);
        for (var d = 0; d < ParameterDraws.Count; d += Vector<double>.Count)
        {
            var largest = LargestWindow(raised.AsSpan(d), list.ClassOf, width);
            Raise(largest / width, 1 / power).CopyTo(results.AsSpan(d));
        }

        return results;
    }

    // Shape (classes, draws): each class's load to the power, class 0 all zeros.
    private static double[] Raised(LoadList list, ParameterDraws draws, double power)
    {
        var raised = new double[list.Classes.Count * ParameterDraws.Count];
        for (var c = 1; c < list.Classes.Count; c++)
        {
            var (demand, gap) = list.Classes[c];
            var row = raised.AsSpan(c * ParameterDraws.Count, ParameterDraws.Count);
            demand.AddTo(row, draws);
            for (var d = 0; d < row.Length; d += Vector<double>.Count)
            {
                var loads = new Vector<double>(row[d..]) / (1000 * gap);
                Raise(loads, power).CopyTo(row[d..]);
            }
        }

        return raised;
    }

    private static Vector<double> LargestWindow(
        ReadOnlySpan<double> raised,
        ReadOnlySpan<int> classOf,
        int width
    )
    {
        var sum = Vector<double>.Zero;
        var largest = Vector<double>.Zero;
        for (var k = 0; k < classOf.Length; k++)
        {
            sum += new Vector<double>(raised[(classOf[k] * ParameterDraws.Count)..]);
            if (k >= width)
            {
                sum -= new Vector<double>(raised[(classOf[k - width] * ParameterDraws.Count)..]);
            }

            largest = Vector.Max(largest, sum);
        }

        return largest;
    }

    private static Vector<double> Raise(Vector<double> loads, double power) =>
        Vector.Exp(Vector.Log(loads) * power);
}
