using Passagework.Choosing;
using Passagework.Foundation;

namespace Passagework.Tests.Choosing;

public class SharesTests
{
    // Four million draws behind the expected values of the running example; 10,000 are within 0.01.
    [Fact]
    public void Shares_of_all_weightings()
    {
        var shares = WeightingShares.Of(Questions.Running(), keepsOrder: false);

        Questions.Near([0.059, 0.111, 0.082, 0.681, 0.068], shares.First, 0.01);
        Assert.Equal(0.853, shares.Behind[0], 0.01);
        Assert.Equal(0.848, shares.Behind[1], 0.01);
        Assert.Equal(0, shares.Behind[3]);
        Assert.Equal(1, shares.First.Sum(), 1e-9);
    }

    [Fact]
    public void Shares_of_the_weightings_that_keep_the_order()
    {
        // The swings fall in the order G, U, B, H, R.
        var shares = WeightingShares.Of(Questions.Running(), keepsOrder: true);

        Questions.Near([0.001, 0.132, 0.126, 0.741, 0.000], shares.First, 0.01);
        Assert.Equal(0.998, shares.Last[4], 0.01);
        Assert.Equal(0.867, shares.Behind[1], 0.01);
        Assert.Equal(0.969, shares.Behind[0], 0.01);
    }

    [Fact]
    public void Two_criteria_can_be_worked_out_and_those_switched_off_stay_off() =>
        Questions.Near(
            [0.1000, 0, 0.3333, 0.1667, 0.4000],
            WeightingShares.Of(Questions.Running([0, 1, 0, 1, 0]), keepsOrder: false).First,
            0.01
        );

    [Fact]
    public void Criteria_of_equal_weight_have_no_order_between_them()
    {
        // Each of three criteria has its own winner; the first weighs most, the other two are alike.
        var choice = Questions.Of(
            [2, 1, 1],
            [
                [0.5, 0, 0],
                [0, 1, 0],
                [0, 0, 1],
            ]
        );
        var shares = WeightingShares.Of(choice, keepsOrder: true);

        Assert.Equal(0, shares.First[1] - shares.First[2], 0.02);
        Assert.True(shares.First[1] > 0.1, $"{shares.First[1]}");
    }

    [Fact]
    public void Every_weighting_keeps_order_sum_and_equal_odds()
    {
        var choice = Questions.Of(
            [2, 0, 1, 1],
            [
                [0, 0, 0, 0],
                [1, 1, 1, 1],
            ]
        );
        var draws = new WeightDraws(choice.Weights, keepsOrder: true);
        var chance = new SplitMix64(3);
        var weights = new double[4];
        var mean = new double[4];
        for (var i = 0; i < 20_000; i++)
        {
            draws.Next(ref chance, weights);
            Assert.Equal(1, weights.Sum(), 1e-12);
            Assert.True(weights[0] >= Math.Max(weights[2], weights[3]));
            for (var k = 0; k < 4; k++)
            {
                mean[k] += weights[k] / 20_000;
            }
        }

        // Centroid of three, 11/18, 5/18, 2/18, the last two shared.
        Questions.Near([0.6111, 0, 0.1944, 0.1944], mean, 0.005);
    }

    [Fact]
    public void A_missing_value_is_drawn_anew_each_time()
    {
        // The first beats 0.75 in a quarter of the draws, by itself on the one criterion that counts for both.
        double[][] rows =
        [
            [double.NaN, 0],
            [0.75, 0],
            [0, 0.75],
        ];
        var choice = Questions.Of([1e9, 1], rows);
        double[] draw = [0, 0, 0.75, 0, 0, 0.75];

        Assert.Equal(0.25, DrawShares.Of(choice, [.. Enumerable.Repeat(draw, 4000)]).First[0], 0.02);
        // Even weights t and even values m by numerical integration: tm, 0.75t and 0.75(1 - t).
        Questions.Near([0.1344, 0.3750, 0.4906], WeightingShares.Of(choice, keepsOrder: false).First, 0.02);
    }

    [Fact]
    public void A_near_copy_does_not_split_the_share()
    {
        double[][] rows =
        [
            [0.9, 0.1],
            [0.1, 0.9],
        ];
        var alone = WeightingShares.Of(Questions.Of([1, 1.01], rows, 0.05), keepsOrder: false);
        var joined = WeightingShares.Of(
            Questions.Of([1, 1.01], [.. rows, [0.13, 0.86]], 0.05),
            keepsOrder: false
        );

        Assert.Equal(alone.First, joined.First[..2]);
        Assert.Equal(joined.First[1], joined.First[2]);
    }

    [Fact]
    public void Who_stands_for_others_is_never_stood_for() =>
        // By score 2, 1, 0: 1 is like 2; 0 is like 1 but not like 2.
        Assert.Equal(
            [0, 2, 2],
            NearCopies.StandFor(
                Questions.Of(
                    [1],
                    [
                        [0.42],
                        [0.46],
                        [0.50],
                    ],
                    0.05
                )
            )
        );

    [Fact]
    public void Shares_of_draws_count_who_leads_in_each()
    {
        var choice = Questions.Of(
            [1, 1],
            [
                [0.6, 0.6],
                [0.5, 0.5],
            ]
        );
        double[][] draws =
        [
            [0.6, 0.6, 0.5, 0.5],
            [0.5, 0.5, 0.9, 0.2],
            [0.5, 0.5, 0.7, 0.3],
            [1, 1, 0, 0],
        ];
        var shares = DrawShares.Of(choice, draws);

        Assert.Equal([0.625, 0.375], shares.First);
        Assert.Equal([0.375, 0.625], shares.Last);
        Assert.Equal([0, 0.5], shares.Behind);
        Assert.Equal(0.5, DrawShares.Ahead(choice.Table, draws, (0, 1), 0));
        Assert.Equal(1, DrawShares.Ahead(choice.Table, draws, (0, 1), 1));
        Assert.Throws<ArgumentException>(() =>
            DrawShares.Of(
                choice,
                [
                    [0.5],
                ]
            )
        );
        Assert.Throws<ArgumentException>(() => DrawShares.Of(choice, []));
    }
}
