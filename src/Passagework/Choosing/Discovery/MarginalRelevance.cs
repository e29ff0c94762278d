namespace Passagework.Choosing.Discovery;

/// <summary>Chooses a few that are good and unlike.</summary>
/// <remarks>Maximal marginal relevance: Carbonell and Goldstein 1998 (from memory).</remarks>
internal static class MarginalRelevance
{
    /// <summary>How much being good counts against being unlike (chosen by us).</summary>
    public const double Lambda = 0.7;

    /// <summary>
    /// The best by score first, then each time the one with the largest λ score − (1 − λ) largest likeness to those chosen; the first
    /// of equal ones.
    /// </summary>
    /// <param name="scores">Of each candidate.</param>
    /// <param name="likeness">Of two candidates, 0 to 1.</param>
    /// <param name="chosen">Chosen already, in order; more are added to them.</param>
    /// <param name="among">Candidates that may be added.</param>
    /// <param name="count">How many shall be chosen in the end, if there are so many.</param>
    public static void Add(
        IReadOnlyList<double> scores,
        Func<int, int, double> likeness,
        List<int> chosen,
        IReadOnlyCollection<int> among,
        int count
    )
    {
        var nearest = among.ToDictionary(
            at => at,
            at => chosen.Select(other => likeness(at, other)).DefaultIfEmpty(0).Max()
        );
        while (chosen.Count < count && nearest.Keys.Except(chosen).ToList() is { Count: > 0 } left)
        {
            var next = left.MaxBy(at => (Lambda * scores[at]) - ((1 - Lambda) * nearest[at]));
            chosen.Add(next);
            foreach (var at in left)
            {
                nearest[at] = Math.Max(nearest[at], likeness(at, next));
            }
        }
    }
}
