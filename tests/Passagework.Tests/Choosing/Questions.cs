using System.Collections.Immutable;
using CsCheck;
using Passagework.Choosing;

namespace Passagework.Tests.Choosing;

/// <summary>Choices the tests ask about.</summary>
internal static class Questions
{
    public const int B = 0;
    public const int G = 1;
    public const int H = 2;
    public const int U = 3;
    public const int R = 4;

    /// <summary>Any choice of 2 to 7 candidates and 1 to 6 criteria; coarse values, so that ties are common.</summary>
    public static readonly Gen<Choice> Coarse =
        from criteria in Gen.Int[1, 6]
        from rows in Gen.Int[0, 4].Select(v => v / 4.0).Array[criteria].Array[2, 7]
        from weights in Gen.Int[1, 9].Select(w => (double)w).Array[criteria]
        select Of(weights, rows);

    /// <summary>The same on thousandths, so that what is no tie is far from one.</summary>
    public static readonly Gen<Choice> Fine =
        from criteria in Gen.Int[2, 6]
        from rows in Gen.Int[0, 1000].Select(v => v / 1000.0).Array[criteria].Array[2, 7]
        from weights in Gen.Int[1, 100].Select(w => (double)w).Array[criteria]
        select Of(weights, rows);

    /// <summary>One of a fixed row of choices, 2 to 7 candidates on 2 to 6 criteria.</summary>
    public static Choice Random(Random random)
    {
        double[] Row(int count) => [.. Enumerable.Range(0, count).Select(_ => random.NextDouble())];
        var criteria = random.Next(2, 7);
        var rows = Enumerable.Range(0, random.Next(2, 8)).Select(_ => Row(criteria)).ToArray();
        return Of(Row(criteria), rows);
    }

    /// <summary>Five invented exercises on five criteria, swings 60, 100, 45, 70, 25.</summary>
    public static Choice Running(double error = 0) => Running([60, 100, 45, 70, 25], error);

    public static Choice Running(double[] weights, double error = 0) =>
        Of(
            weights,
            [
                [0.82, 0.55, 0.30, 0.60, 0.75],
                [0.90, 0.62, 0.45, 0.50, 0.50],
                [0.55, 0.80, 0.70, 0.25, 0.60],
                [0.70, 0.70, 0.60, 0.45, 1.00],
                [0.30, 0.40, 0.55, 0.70, 0.80],
            ],
            error
        );

    /// <summary>A choice; a value that is not a number is missing.</summary>
    public static Choice Of(double[] weights, double[][] rows, double error = 0)
    {
        var table = Table(rows, error);
        return Choice.Of(table, CriterionWeights.Of(table.Criteria, [.. weights]).OrThrow()).OrThrow();
    }

    public static ChoiceTable Table(double[][] rows, double error = 0) =>
        ChoiceTable
            .Of(
                [.. Enumerable.Range(0, rows[0].Length).Select(k => $"c{k}")],
                [.. rows.Select((row, a) => new Candidate($"E{a + 1}", Marks(row, error)))]
            )
            .OrThrow();

    private static ImmutableArray<Mark> Marks(double[] row, double error) =>
        [.. row.Select(value => double.IsNaN(value) ? new Mark(null) : new Mark(value, error))];

    /// <summary>The same candidates under other weights.</summary>
    public static Choice Under(Choice choice, CriterionWeights weights) =>
        Choice.Of(choice.Table, weights).OrThrow();

    public static void Near(double[] expected, IEnumerable<double> actual, double tolerance)
    {
        double[] found = [.. actual];
        Assert.Equal(expected.Length, found.Length);
        for (var i = 0; i < found.Length; i++)
        {
            Assert.True(Math.Abs(expected[i] - found[i]) <= tolerance, $"{i}: {expected[i]}, {found[i]}");
        }
    }
}
