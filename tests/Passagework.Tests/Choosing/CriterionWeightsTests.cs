using Passagework.Choosing;

namespace Passagework.Tests.Choosing;

public class CriterionWeightsTests
{
    [Fact]
    public void An_order_alone_gives_centroid_or_rank_sum_weights()
    {
        Questions.Near([0.4567, 0.2567, 0.1567, 0.0900, 0.0400], CriterionWeights.Centroid(5), 0.00005);
        Questions.Near([0.7500, 0.2500], CriterionWeights.Centroid(2), 0.00005);
        Questions.Near(
            [0.3397, 0.2147, 0.1522, 0.1106, 0.0793, 0.0543, 0.0335, 0.0156],
            CriterionWeights.Centroid(8),
            0.00005
        );
        Questions.Near([0.3333, 0.2667, 0.2000, 0.1333, 0.0667], CriterionWeights.RankSum(5), 0.00005);
    }

    [Fact]
    public void Swings_become_shares() =>
        Questions.Near([0.2000, 0.3333, 0.1500, 0.2333, 0.0833], Questions.Running().Weights.Shares, 0.00005);

    [Fact]
    public void A_step_on_one_criterion_is_worth_a_step_on_another() =>
        Assert.Equal(0.12, Questions.Running().Weights.Worth(0.20, Questions.B, Questions.G), 1e-12);

    [Fact]
    public void One_weight_is_moved_and_the_rest_keep_their_proportion()
    {
        var weights = Questions
            .Of(
                [1, 1, 2],
                [
                    [0, 0, 0],
                    [1, 1, 1],
                ]
            )
            .Weights;

        Questions.Near([0.4, 0.2, 0.4], weights.With(0, 0.4).Shares, 1e-12);
        Questions.Near([1, 0, 0], weights.With(0, 1).Shares, 0);
        Questions.Near([0.5, 0.25, 0.25], weights.With(0, 1).With(0, 0.5).Shares, 0);
    }
}
