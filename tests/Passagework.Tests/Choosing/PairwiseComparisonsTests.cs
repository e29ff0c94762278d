using Passagework.Choosing;

namespace Passagework.Tests.Choosing;

public class PairwiseComparisonsTests
{
    // J. Papathanasiou and N. Ploskas, "Multiple Criteria Decision Aid", Springer 2018, chapter 5.
    private static readonly double[][] Criteria = FromTriangle(4, 1, 5, 3, 5, 3, 1.0 / 3);
    private static readonly double[][][] Sites =
    [
        FromTriangle(
            6,
            5,
            1,
            1,
            1 / 3.0,
            3,
            1 / 3.0,
            1 / 5.0,
            1 / 7.0,
            1,
            1 / 3.0,
            1 / 5.0,
            1,
            1 / 3.0,
            3,
            7
        ),
        FromTriangle(
            6,
            7,
            3,
            1 / 3.0,
            1 / 3.0,
            1 / 3.0,
            1 / 3.0,
            1 / 7.0,
            1 / 9.0,
            1 / 7.0,
            1 / 5.0,
            1 / 5.0,
            1 / 5.0,
            1,
            1,
            1
        ),
        FromTriangle(6, 1 / 9.0, 1 / 7.0, 1 / 9.0, 1, 1 / 5.0, 1, 1, 5, 3, 1, 5, 1, 7, 3, 1 / 3.0),
        FromTriangle(
            6,
            1 / 5.0,
            1 / 5.0,
            1 / 3.0,
            1 / 7.0,
            1 / 5.0,
            1,
            3,
            1 / 3.0,
            1,
            1,
            1 / 3.0,
            1,
            1 / 7.0,
            1,
            5
        ),
    ];

    [Fact]
    public void The_published_criteria_are_consistent()
    {
        var solved = PairwiseComparisons.Of(Criteria).OrThrow();

        Questions.Near([0.3899, 0.3899, 0.0679, 0.1524], solved.Priorities, 0.00005);
        Assert.Equal(4.04349, solved.Eigenvalue, 0.000005);
        Assert.Equal(0.0145, solved.ConsistencyIndex, 0.00005);
        Assert.Equal(0.0161, solved.ConsistencyRatio(RandomIndex.Saaty)!.Value, 0.00005);
        Assert.Equal(0.0164, solved.ConsistencyRatio(RandomIndex.AlonsoLamata)!.Value, 0.00005);
    }

    [Fact]
    public void The_published_priorities_come_out()
    {
        var weights = PairwiseComparisons.Of(Criteria).OrThrow().Priorities;
        var sites = Sites.Select(site => PairwiseComparisons.Of(site).OrThrow()).ToArray();

        Questions.Near(
            [0.117, 0.071, 0.095, 0.212, 0.350, 0.155],
            Enumerable
                .Range(0, 6)
                .Select(a => Math.Round(sites.Select((site, k) => weights[k] * site.Priorities[a]).Sum(), 3)),
            1e-9
        );
        Questions.Near([6.20765, 6.16391, 6.13730, 6.24667], sites.Select(s => s.Eigenvalue), 0.000005);
    }

    [Fact]
    public void Three_things_by_hand()
    {
        // For three things the eigenvector equals the geometric means of the rows.
        var first = PairwiseComparisons.Of(FromTriangle(3, 3, 5, 2)).OrThrow();
        Questions.Near([0.6483, 0.2297, 0.1220], first.Priorities, 0.00005);
        Assert.Equal(3.00369, first.Eigenvalue, 0.000005);
        Assert.Equal(0.0032, first.ConsistencyRatio(RandomIndex.Saaty)!.Value, 0.00005);
        Assert.Equal(0.0035, first.ConsistencyRatio(RandomIndex.AlonsoLamata)!.Value, 0.00005);

        var second = PairwiseComparisons.Of(FromTriangle(3, 1 / 3.0, 5, 7)).OrThrow();
        Questions.Near([0.2790, 0.6491, 0.0719], second.Priorities, 0.00005);
        Assert.Equal(0.0559, second.ConsistencyRatio(RandomIndex.Saaty)!.Value, 0.00005);
        Assert.Equal(0.0618, second.ConsistencyRatio(RandomIndex.AlonsoLamata)!.Value, 0.00005);
    }

    [Fact]
    public void Two_things_cannot_contradict_and_eleven_are_not_in_the_first_table()
    {
        Assert.Equal(
            0,
            PairwiseComparisons.Of(FromTriangle(2, 7)).OrThrow().ConsistencyRatio(RandomIndex.Saaty)
        );
        var eleven = PairwiseComparisons.Of(FromTriangle(11, [.. Enumerable.Repeat(1.0, 55)])).OrThrow();
        Assert.Null(eleven.ConsistencyRatio(RandomIndex.Saaty));
        Assert.Equal(0, eleven.ConsistencyRatio(RandomIndex.AlonsoLamata)!.Value, 1e-9);
        Assert.Equal("Saaty 1980", RandomIndex.Saaty.Name);
        Assert.Equal("Alonso and Lamata 2006", RandomIndex.AlonsoLamata.Name);
    }

    [Fact]
    public void What_is_no_comparison_is_refused()
    {
        Assert.Equal(
            "row 2: 1 entries; 2, as many as rows",
            Said([
                [1, 2],
                [0.5],
            ])
        );
        Assert.Equal(
            "row 1, column 2: a comparison of 0; a number above 0",
            Said([
                [1, 0],
                [1, 1],
            ])
        );
        Assert.Equal(
            "row 1, column 2: a comparison of NaN; a number above 0",
            Said([
                [1, double.NaN],
                [1, 1],
            ])
        );
        Assert.Equal(
            "row 2, column 1: the comparison is not 1 over its mirror image",
            Said([
                [1, 2],
                [2, 1],
            ])
        );
        Assert.Equal(
            "row 1, column 1: the comparison is not 1 over its mirror image",
            Said([
                [2, 1],
                [1, 1],
            ])
        );
    }

    private static string Said(double[][] rows) =>
        PairwiseComparisons.Of(rows).TryGet(out _, out var fault) ? "no fault" : fault.ToString();

    // The part above the diagonal, row by row.
    private static double[][] FromTriangle(int count, params double[] above)
    {
        var rows = new double[count][];
        for (var i = 0; i < count; i++)
        {
            rows[i] = new double[count];
            rows[i][i] = 1;
        }

        var next = 0;
        for (var i = 0; i < count; i++)
        {
            for (var j = i + 1; j < count; j++)
            {
                rows[i][j] = above[next++];
                rows[j][i] = 1 / rows[i][j];
            }
        }

        return rows;
    }
}
