using Passagework.Choosing;

namespace Passagework.Tests.Choosing;

public class MethodTests
{
    // J. Papathanasiou and N. Ploskas, "Multiple Criteria Decision Aid", Springer 2018: choice among six sites.
    private static readonly double[][] Sites =
    [
        [8, 7, 2, 1],
        [5, 3, 7, 5],
        [7, 5, 6, 4],
        [9, 9, 7, 3],
        [11, 10, 3, 7],
        [6, 9, 5, 4],
    ];
    private static readonly double[] SiteWeights = [0.4, 0.3, 0.1, 0.2];

    [Fact]
    public void Topsis_gives_the_published_closeness() =>
        // The same book, chapter 1.
        Questions.Near(
            [0.387, 0.327, 0.391, 0.615, 0.868, 0.493],
            Topsis.Closeness([.. SiteWeights], Sites).Select(x => Math.Round(x, 3)),
            // 0.86846 is printed 0.868.
            1e-9
        );

    [Fact]
    public void Topsis_ranks_the_running_example_and_moves_when_one_goes()
    {
        Questions.Near(
            [0.5609, 0.6040, 0.5219, 0.6311, 0.4359],
            new Topsis().Scores(Questions.Running()),
            0.00005
        );
        var without = Questions.Of(
            [60, 100, 45, 70, 25],
            [
                [0.82, 0.55, 0.30, 0.60, 0.75],
                [0.90, 0.62, 0.45, 0.50, 0.50],
                [0.55, 0.80, 0.70, 0.25, 0.60],
                [0.70, 0.70, 0.60, 0.45, 1.00],
            ]
        );
        Questions.Near([0.5278, 0.5475, 0.4521, 0.6050], new Topsis().Scores(without), 0.00005);
    }

    [Fact]
    public void Topsis_of_equal_rows_is_equal() =>
        Assert.Equal(
            [1, 1],
            new Topsis().Scores(
                Questions.Of(
                    [1, 1],
                    [
                        [0, 0.5],
                        [0, 0.5],
                    ]
                )
            )
        );

    [Fact]
    public void Promethee_gives_the_published_flows()
    {
        // The same book, chapter 3: linear preference, q = 1, p = 2.
        var (plus, minus) = SiteFlows(new Preference(1, 2));

        Questions.Near([-0.26, -0.52, -0.22, 0.36, 0.70, -0.06], Net(plus, minus), 1e-9);
        Questions.Near([0.28, 0.14, 0.22, 0.52, 0.78, 0.26], plus, 1e-9);
        Questions.Near([0.54, 0.66, 0.44, 0.16, 0.08, 0.32], minus, 1e-9);
        var usual = SiteFlows(new Preference(0, 0));
        Questions.Near([-0.28, -0.50, -0.24, 0.32, 0.84, -0.14], Net(usual.Plus, usual.Minus), 1e-9);
    }

    [Fact]
    public void Promethee_ranks_the_running_example() =>
        Questions.Near(
            [-0.0075, 0.0267, 0.0139, 0.2322, -0.2653],
            new Promethee().Scores(Questions.Running(error: 0.05)),
            0.00005
        );

    [Fact]
    public void Promethee_prefers_nothing_to_a_missing_value() =>
        Questions.Near(
            [0.5, -0.5],
            new Promethee().Scores(
                Questions.Of(
                    [1, 1],
                    [
                        [1, double.NaN],
                        [0, 1],
                    ]
                )
            ),
            1e-12
        );

    [Fact]
    public void Shares_of_ratios_turn_round_when_a_copy_joins()
    {
        // V. Belton and T. Gear, "On a short-coming of Saaty's method of analytic hierarchies", Omega 11, 1983
        // (ratios 1:9:1, 9:1:1, 8:9:1, from memory); the totals are arithmetic.
        double[] a = [1 / 9.0, 1, 8 / 9.0];
        double[] b = [1, 1 / 9.0, 1];
        double[] c = [1 / 9.0, 1 / 9.0, 1 / 9.0];

        Questions.Near(
            [0.4512, 0.4697, 0.0791],
            new HierarchyProcess().Scores(Questions.Of([1, 1, 1], [a, b, c])),
            0.00005
        );
        Questions.Near(
            [0.3654, 0.2889, 0.0568, 0.2889],
            new HierarchyProcess().Scores(Questions.Of([1, 1, 1], [a, b, c, b])),
            0.00005
        );
    }

    [Fact]
    public void Ratios_stay_within_the_scale() =>
        // 9 : 1 and 1 : 1.
        Questions.Near(
            [0.7, 0.3],
            new HierarchyProcess().Scores(
                Questions.Of(
                    [1, 1],
                    [
                        [1, 0],
                        [0.01, 0],
                    ]
                )
            ),
            1e-9
        );

    [Fact]
    public void Methods_are_known_by_their_names() =>
        Assert.Equal(
            ["weighted-sum", "topsis", "promethee", "ahp"],
            RankingMethods.All.Select(method => method.Id)
        );

    private static IEnumerable<double> Net(double[] plus, double[] minus) => plus.Zip(minus, (a, b) => a - b);

    private static (double[] Plus, double[] Minus) SiteFlows(Preference preference) =>
        Promethee.Flows(
            Sites.Length,
            (a, b) => SiteWeights.Select((w, k) => w * preference.Of(Sites[a][k] - Sites[b][k])).Sum()
        );
}
