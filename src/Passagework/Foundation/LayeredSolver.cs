namespace Passagework.Foundation;

/// <summary>Cheapest ways through a chain of layers: exact, by dynamic programming from the last layer back.</summary>
/// <remarks>
/// Order of two ways: cost (equal within 10⁻⁹), then the sum of ties, then the lower state number at the first layer
/// where they differ. A sum of terms that depend on neighbouring states only, so any best way's rest is best for its
/// state (Bellman). Cost O(layers × states² × count), memory O(layers × states × count).
/// </remarks>
public static class LayeredSolver
{
    /// <summary>Costs nearer than this are equal.</summary>
    public const double Tolerance = 1e-9;

    /// <summary>
    /// The best <paramref name="count"/> different ways, best first; empty when there is none. Arcs whose weighted
    /// cost is above <paramref name="limit"/> are left out.
    /// </summary>
    public static IReadOnlyList<LayeredPath> Best(
        LayeredProblem problem,
        int count = 1,
        double limit = double.PositiveInfinity
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        var table = new RestTable(problem, count);
        for (var step = problem.Steps.Count - 1; step >= 0; step--)
        {
            table.Fill(step, limit);
        }

        return table.ReadBest();
    }

    /// <summary>The least possible largest weighted arc cost of any way; infinity when there is no way.</summary>
    public static double LeastWorst(LayeredProblem problem)
    {
        var worst = new double[problem.StartCosts.Length];
        for (var i = 0; i < worst.Length; i++)
        {
            worst[i] = double.IsPositiveInfinity(problem.StartCosts[i]) ? double.PositiveInfinity : 0;
        }

        for (var s = 0; s < problem.Steps.Count; s++)
        {
            worst = WorstAfter(problem.Steps[s], problem.Weights[s], worst);
        }

        return worst.Min();
    }

    /// <summary>The first step after which no state can be reached; null when the last layer can.</summary>
    public static int? FirstBroken(LayeredProblem problem)
    {
        var reached = Array.ConvertAll(problem.StartCosts, cost => cost < double.PositiveInfinity);
        for (var s = 0; s < problem.Steps.Count; s++)
        {
            var step = problem.Steps[s];
            var next = new bool[step.To];
            for (var i = 0; i < step.From; i++)
            {
                for (var j = 0; j < step.To && reached[i]; j++)
                {
                    next[j] |= step.Costs[(i * step.To) + j] < double.PositiveInfinity;
                }
            }

            if (!next.Contains(true))
            {
                return s;
            }

            reached = next;
        }

        return null;
    }

    private static double[] WorstAfter(LayeredStep step, double weight, double[] worst)
    {
        var next = new double[step.To];
        Array.Fill(next, double.PositiveInfinity);
        for (var i = 0; i < step.From; i++)
        {
            for (var j = 0; j < step.To; j++)
            {
                var through = Math.Max(worst[i], weight * step.Costs[(i * step.To) + j]);
                next[j] = Math.Min(next[j], through);
            }
        }

        return next;
    }
}
