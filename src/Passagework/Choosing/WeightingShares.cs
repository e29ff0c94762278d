using System.Numerics;
using Passagework.Foundation;

namespace Passagework.Choosing;

/// <summary>Who would lead under other weights: no probability of being right, but a measure of how much hangs on them.</summary>
/// <remarks>
/// First-rank acceptability (R. Lahdelma, J. Hokkanen and P. Salminen, "SMAA: stochastic multiobjective acceptability
/// analysis", 1998). 9,604 draws give ±0.01 at 95 %. A missing value is drawn evenly from 0 to 1 each time.
/// </remarks>
public static class WeightingShares
{
    /// <summary>Weightings drawn.</summary>
    public const int Draws = 10_000;

    private const ulong Seed = 1;

    /// <summary>Shares over all weightings, or over those that keep the order of the present weights.</summary>
    public static LeadShares Of(Choice choice, bool keepsOrder, int draws = Draws) =>
        Of(choice, Ranking.Of(choice).Leader, keepsOrder, draws);

    /// <summary>The share of all weightings in which one candidate is ahead of another.</summary>
    public static double Ahead(Choice choice, int first, int second) =>
        Of(choice, first, keepsOrder: false, Draws).Behind[second];

    private static LeadShares Of(Choice choice, int leader, bool keepsOrder, int draws)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(draws, 1);
        var columns = Columns(choice);
        var missing = Missing(choice);
        var tally = new LeadTally(leader, NearCopies.StandFor(choice));
        var chance = new SplitMix64(Seed);
        var source = new WeightDraws(choice.Weights, keepsOrder);
        var weights = new double[columns.Length];
        var scores = new double[columns[0].Length];
        for (var draw = 0; draw < draws; draw++)
        {
            source.Next(ref chance, weights);
            Sum(columns, weights, scores);
            foreach (var (a, k) in missing)
            {
                scores[a] += weights[k] * chance.NextUniform();
            }

            tally.Add(scores.AsSpan(0, choice.Count));
        }

        return tally.Shares();
    }

    // One array a criterion, padded to whole vectors; 0 where the value is missing.
    private static double[][] Columns(Choice choice)
    {
        var width = Vector<double>.Count;
        var padded = (choice.Count + width - 1) / width * width;
        var columns = new double[choice.Table.Criteria.Length][];
        for (var k = 0; k < columns.Length; k++)
        {
            columns[k] = new double[padded];
            for (var a = 0; a < choice.Count; a++)
            {
                columns[k][a] = choice.Table.Candidates[a].Marks[k].Value ?? 0;
            }
        }

        return columns;
    }

    private static List<(int Candidate, int Criterion)> Missing(Choice choice) =>
        [
            .. from a in Enumerable.Range(0, choice.Count)
            from k in choice.Weights.Used
            where choice.Table.IsMissing(a, k)
            select (a, k),
        ];

    private static void Sum(double[][] columns, double[] weights, double[] scores)
    {
        Array.Clear(scores);
        for (var k = 0; k < columns.Length; k++)
        {
            if (weights[k] == 0)
            {
                continue;
            }

            var weight = new Vector<double>(weights[k]);
            for (var a = 0; a < scores.Length; a += Vector<double>.Count)
            {
                var sum = new Vector<double>(scores, a) + (weight * new Vector<double>(columns[k], a));
                sum.CopyTo(scores, a);
            }
        }
    }
}
