using System.Collections.Immutable;

namespace Passagework.Choosing;

/// <summary>One candidate in its place.</summary>
/// <param name="Candidate">Its index in the table.</param>
/// <param name="Score">By the method that ranked.</param>
/// <param name="Place">1 for the best; equal ones have the same.</param>
/// <param name="MissingWeight">The share of the weights that fell on values it does not have.</param>
public sealed record Standing(int Candidate, double Score, int Place, double MissingWeight);

/// <summary>All candidates from the best to the last.</summary>
/// <param name="Standings">In order; equal ones in the order of the table.</param>
public sealed record Ranking(ImmutableArray<Standing> Standings)
{
    /// <summary>Scores nearer than this are equal.</summary>
    public const double Tolerance = 1e-9;

    /// <summary>The best, by index in the table.</summary>
    public int Leader => Standings[0].Candidate;

    /// <summary>The one it has to be compared with.</summary>
    public int RunnerUp => Standings[1].Candidate;

    /// <summary>Whether more than one is best.</summary>
    public bool IsTied => Standings[1].Place == 1;

    /// <summary>Ranks by the weighted sum.</summary>
    public static Ranking Of(Choice choice) => Of(choice, new WeightedSum());

    /// <summary>Ranks by any method.</summary>
    public static Ranking Of(Choice choice, IRankingMethod method)
    {
        var scores = method.Scores(choice);
        int[] order = [.. Enumerable.Range(0, choice.Count).OrderByDescending(a => scores[a])];
        var standings = ImmutableArray.CreateBuilder<Standing>(order.Length);
        for (var from = 0; from < order.Length; )
        {
            // A tie reaches from its best downwards, so that it can't creep along a chain.
            var to = from + 1;
            while (to < order.Length && scores[order[from]] - scores[order[to]] < Tolerance)
            {
                to++;
            }

            foreach (var a in order[from..to].Order())
            {
                standings.Add(new Standing(a, scores[a], from + 1, MissingWeight(choice, a)));
            }

            from = to;
        }

        return new Ranking(standings.MoveToImmutable());
    }

    private static double MissingWeight(Choice choice, int candidate) =>
        choice
            .Weights.Used.Where(k => choice.Table.IsMissing(candidate, k))
            .Sum(k => choice.Weights.Shares[k]);
}
