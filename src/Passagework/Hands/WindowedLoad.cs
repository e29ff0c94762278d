namespace Passagework.Hands;

/// <summary>
/// The load of a line: the largest power mean of neighbouring loads. A pick can't bank spare time, so the mean would
/// be wrong; one late note in eight passes, so the worst move would be wrong too.
/// </summary>
public static class WindowedLoad
{
    /// <summary>
    /// The power at which one hard move among easy ones may exceed its time by exactly <paramref name="tolerance"/>.
    /// </summary>
    public static double Power(int window, double tolerance) => Math.Log(window) / Math.Log(1 + tolerance);

    /// <summary>
    /// max over windows of W loads of (mean of u^p)^(1/p); with fewer than W loads the mean is over what there is.
    /// 0 for no loads.
    /// </summary>
    /// <param name="loads">Demand over the time there is, one for each transition.</param>
    /// <param name="window">W, moves averaged together.</param>
    /// <param name="tolerance">δ, which sets the power.</param>
    public static double Of(ReadOnlySpan<double> loads, int window, double tolerance)
    {
        if (loads.IsEmpty)
        {
            return 0;
        }

        var (_, width, sum) = Largest(loads, window, tolerance);
        return Math.Pow(sum / width, 1 / Power(window, tolerance));
    }

    /// <summary>The transition that weighs most in the window that sets the load, the first of equal ones; −1 for no loads.</summary>
    /// <param name="loads">Demand over the time there is, one for each transition.</param>
    /// <param name="window">W, moves averaged together.</param>
    /// <param name="tolerance">δ, which sets the power.</param>
    public static int Hardest(ReadOnlySpan<double> loads, int window, double tolerance)
    {
        if (loads.IsEmpty)
        {
            return -1;
        }

        var (start, width, _) = Largest(loads, window, tolerance);
        var hardest = start;
        for (var i = start + 1; i < start + width; i++)
        {
            hardest = loads[i] > loads[hardest] ? i : hardest;
        }

        return hardest;
    }

    private static (int Start, int Width, double Sum) Largest(
        ReadOnlySpan<double> loads,
        int window,
        double tolerance
    )
    {
        var power = Power(window, tolerance);
        var width = Math.Min(window, loads.Length);
        var raised = new double[loads.Length];
        for (var i = 0; i < raised.Length; i++)
        {
            raised[i] = Math.Pow(loads[i], power);
        }

        var (largest, first) = (0.0, 0);
        for (var start = 0; start + width <= raised.Length; start++)
        {
            var sum = 0.0;
            for (var i = start; i < start + width; i++)
            {
                sum += raised[i];
            }

            (largest, first) = sum > largest ? (sum, start) : (largest, first);
        }

        return (first, width, largest);
    }
}
