using System.Collections.Immutable;

namespace Passagework.Choosing;

/// <summary>The candidates compared two by two on each criterion, their shares weighed and summed.</summary>
/// <remarks>
/// AHP (T. L. Saaty, "The Analytic Hierarchy Process", 1980). Nobody is asked: a comparison is the ratio of two values,
/// kept within the method's scale of 1 to 9, and 1 of two zeros. A cross-check: a copy of a candidate can change who leads.
/// </remarks>
public sealed class HierarchyProcess : IRankingMethod
{
    private const double Scale = 9;

    /// <inheritdoc/>
    public string Id => "ahp";

    /// <inheritdoc/>
    public ImmutableArray<double> Scores(Choice choice)
    {
        var scores = new double[choice.Count];
        foreach (var k in choice.Weights.Used)
        {
            var priorities = PairwiseComparisons.Of(Ratios(choice, k)).OrThrow().Priorities;
            for (var a = 0; a < scores.Length; a++)
            {
                scores[a] += choice.Weights.Shares[k] * priorities[a];
            }
        }

        return [.. scores];
    }

    private static double[][] Ratios(Choice choice, int criterion)
    {
        double[] values =
        [
            .. Enumerable.Range(0, choice.Count).Select(a => choice.Table.Counted(a, criterion)),
        ];
        return Array.ConvertAll(values, one => Array.ConvertAll(values, other => Ratio(one, other)));
    }

    private static double Ratio(double one, double other) =>
        one == other ? 1 : Math.Clamp(one / other, 1 / Scale, Scale);
}
