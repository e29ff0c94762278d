using System.Collections.Immutable;
using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Choosing;

/// <summary>How many times each thing outweighs each other, and the priorities that follow.</summary>
/// <remarks>
/// Priorities are the principal eigenvector scaled to 1, found by power iteration; a positive matrix has exactly one
/// (Perron). T. L. Saaty, "The Analytic Hierarchy Process", 1980.
/// </remarks>
internal sealed class PairwiseComparisons
{
    /// <summary>How far a product of two mirrored entries may lie from 1.</summary>
    private const double ReciprocalTolerance = 1e-6;

    private const double Settled = 1e-14;
    private const int MostRounds = 10_000;

    private PairwiseComparisons(ImmutableArray<double> priorities, double eigenvalue)
    {
        Priorities = priorities;
        Eigenvalue = eigenvalue;
    }

    /// <summary>Share of each thing; they sum to 1.</summary>
    public ImmutableArray<double> Priorities { get; }

    /// <summary>The largest eigenvalue; the number of things when no judgement contradicts another.</summary>
    public double Eigenvalue { get; }

    /// <summary>(L − n)/(n − 1); 0 for one or two things, which can't contradict.</summary>
    public double ConsistencyIndex =>
        Priorities.Length > 2 ? (Eigenvalue - Priorities.Length) / (Priorities.Length - 1) : 0;

    /// <summary>Takes a square matrix of positive numbers in which mirrored entries are reciprocal.</summary>
    public static Outcome<PairwiseComparisons> Of(double[][] rows)
    {
        for (var i = 0; i < rows.Length; i++)
        {
            if (rows[i].Length != rows.Length)
            {
                return new Fault($"{rows[i].Length} entries", Row(i), $"{rows.Length}, as many as rows");
            }

            if (Array.FindIndex(rows[i], x => !double.IsFinite(x) || x <= 0) is >= 0 and var bad)
            {
                var written = rows[i][bad].ToString(CultureInfo.InvariantCulture);
                return new Fault($"a comparison of {written}", Entry(i, bad), "a number above 0");
            }
        }

        for (var i = 0; i < rows.Length; i++)
        {
            for (var j = 0; j <= i; j++)
            {
                if (Math.Abs((rows[i][j] * rows[j][i]) - 1) > ReciprocalTolerance)
                {
                    return new Fault("the comparison is not 1 over its mirror image", Entry(i, j));
                }
            }
        }

        return Solve(rows);
    }

    /// <summary>Index over what random judgements give; null where that is not tabled.</summary>
    public double? ConsistencyRatio(RandomIndex index) =>
        Priorities.Length < 3 ? 0 : ConsistencyIndex / index.Of(Priorities.Length);

    private static PairwiseComparisons Solve(double[][] rows)
    {
        var shares = new double[rows.Length];
        Array.Fill(shares, 1.0 / rows.Length);
        var sum = 0.0;
        for (var round = 0; round < MostRounds; round++)
        {
            var next = Array.ConvertAll(rows, row => Product(row, shares));
            sum = next.Sum();
            var moved = 0.0;
            for (var i = 0; i < next.Length; i++)
            {
                next[i] /= sum;
                moved = Math.Max(moved, Math.Abs(next[i] - shares[i]));
            }

            shares = next;
            if (moved < Settled)
            {
                break;
            }
        }

        return new PairwiseComparisons([.. shares], sum);
    }

    private static double Product(double[] row, double[] shares)
    {
        var sum = 0.0;
        for (var i = 0; i < row.Length; i++)
        {
            sum += row[i] * shares[i];
        }

        return sum;
    }

    private static string Row(int i) => $"row {i + 1}";

    private static string Entry(int i, int j) => $"row {i + 1}, column {j + 1}";
}
