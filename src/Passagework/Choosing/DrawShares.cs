using Passagework.Foundation;

namespace Passagework.Choosing;

/// <summary>Who would lead if the measures' parameters were a little different.</summary>
/// <remarks>A draw holds the values of all candidates, row after row, as one set of parameters gives them.</remarks>
public static class DrawShares
{
    /// <summary>Share of draws in which a difference must keep its sign to be called clear.</summary>
    public const double Clear = 0.9;

    private const ulong Seed = 2;

    /// <summary>Shares over the draws under the present weights; a missing value is drawn evenly from 0 to 1.</summary>
    /// <exception cref="ArgumentException">No draws, or one of another size than the table.</exception>
    public static LeadShares Of(Choice choice, IReadOnlyList<double[]> draws)
    {
        var width = choice.Table.Criteria.Length;
        if (draws.Count == 0 || draws.Any(draw => draw.Length != choice.Count * width))
        {
            throw new ArgumentException(
                "Every draw holds one value a candidate and criterion.",
                nameof(draws)
            );
        }

        var tally = new LeadTally(Ranking.Of(choice).Leader, NearCopies.StandFor(choice));
        var chance = new SplitMix64(Seed);
        var isMissing = Missing(choice.Table);
        var scores = new double[choice.Count];
        foreach (var draw in draws)
        {
            for (var a = 0; a < scores.Length; a++)
            {
                scores[a] = 0;
                for (var k = 0; k < width; k++)
                {
                    var cell = (a * width) + k;
                    var value = isMissing[cell] ? chance.NextUniform() : draw[cell];
                    scores[a] += choice.Weights.Shares[k] * value;
                }
            }

            tally.Add(scores);
        }

        return tally.Shares();
    }

    /// <summary>Share of draws in which one candidate's value on a criterion is above another's; equal ones don't count.</summary>
    public static double Ahead(
        ChoiceTable table,
        IReadOnlyList<double[]> draws,
        (int Over, int Under) pair,
        int criterion
    )
    {
        var width = table.Criteria.Length;
        return draws.Count(draw =>
                draw[(pair.Over * width) + criterion] > draw[(pair.Under * width) + criterion]
            ) / (double)draws.Count;
    }

    private static bool[] Missing(ChoiceTable table) =>
        [.. table.Candidates.SelectMany(candidate => candidate.Marks.Select(mark => mark.Value is null))];
}
