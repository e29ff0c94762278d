using System.Collections.Immutable;

namespace Passagework.Choosing;

/// <summary>Nearness to the best of every criterion and distance from the worst, both taken from the candidates present.</summary>
/// <remarks>C. L. Hwang and K. Yoon, "Multiple Attribute Decision Making", 1981. A cross-check: the scores have no unit and move when candidates come or go.</remarks>
public sealed class Topsis : IRankingMethod
{
    /// <inheritdoc/>
    public string Id => "topsis";

    /// <inheritdoc/>
    public ImmutableArray<double> Scores(Choice choice) =>
        Closeness(
            choice.Weights.Shares,
            [
                .. Enumerable
                    .Range(0, choice.Count)
                    .Select(a =>
                        Enumerable
                            .Range(0, choice.Weights.Shares.Length)
                            .Select(k => choice.Table.Counted(a, k))
                            .ToArray()
                    ),
            ]
        );

    /// <summary>d⁻/(d⁺ + d⁻) of each row; more is better in every column. 1 where all rows are the same.</summary>
    internal static ImmutableArray<double> Closeness(ImmutableArray<double> weights, double[][] rows)
    {
        var weighted = Array.ConvertAll(rows, row => new double[row.Length]);
        var best = new double[weights.Length];
        var worst = new double[weights.Length];
        for (var k = 0; k < weights.Length; k++)
        {
            var norm = Math.Sqrt(rows.Sum(row => row[k] * row[k]));
            for (var a = 0; a < rows.Length; a++)
            {
                weighted[a][k] = norm > 0 ? weights[k] * rows[a][k] / norm : 0;
            }

            best[k] = weighted.Max(row => row[k]);
            worst[k] = weighted.Min(row => row[k]);
        }

        return [.. weighted.Select(row => Between(Distance(row, worst), Distance(row, best)))];
    }

    private static double Between(double fromWorst, double fromBest) =>
        fromWorst + fromBest > 0 ? fromWorst / (fromWorst + fromBest) : 1;

    private static double Distance(double[] a, double[] b) =>
        Math.Sqrt(a.Zip(b, (x, y) => (x - y) * (x - y)).Sum());
}
