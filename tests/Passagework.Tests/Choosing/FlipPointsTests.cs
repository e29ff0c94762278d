using Passagework.Choosing;

namespace Passagework.Tests.Choosing;

public class FlipPointsTests
{
    [Theory]
    [InlineData(0.3310, 1, Questions.B)]
    [InlineData(0.5701, 1, Questions.U)]
    [InlineData(0.0054, 1, Questions.R)]
    [InlineData(null, 1, Questions.G)]
    [InlineData(null, 1, Questions.H)]
    [InlineData(0.4571, 0, Questions.B)]
    [InlineData(0.4440, 0, Questions.U)]
    [InlineData(0.5876, 2, Questions.G)]
    [InlineData(0.4742, 2, Questions.H)]
    [InlineData(0.5158, 4, Questions.U)]
    public void A_rival_draws_level_at_this_weight(double? expected, int rival, int criterion)
    {
        var found = FlipPoints.Between(Questions.Running(), 3, rival, criterion);
        Assert.Equal(expected, found is { } weight ? Math.Round(weight, 4) : null);
    }

    [Fact]
    public void The_nearest_flip_of_each_weight_names_who_leads_then() =>
        Assert.Equal(
            [
                new Flip(Questions.B, 0.3310, 1),
                new Flip(Questions.G, 0.5876, 2),
                new Flip(Questions.H, 0.4742, 2),
                new Flip(Questions.U, 0.4440, 0),
                new Flip(Questions.R, 0.0054, 1),
            ],
            FlipPoints
                .Of(Questions.Running())
                .Select(flip => flip with { Weight = Math.Round(flip.Weight, 4) })
        );

    [Fact]
    public void One_criterion_alone_has_no_flip() =>
        Assert.Empty(
            FlipPoints.Of(
                Questions.Of(
                    [1],
                    [
                        [0.2],
                        [0.5],
                    ]
                )
            )
        );

    [Fact]
    public void Ranking_again_just_before_and_just_after_agrees_on_a_thousand_cases()
    {
        const double near = 1e-6;
        var flips = 0;
        var random = new Random(5);
        for (var i = 0; i < 1000; i++)
        {
            var choice = Questions.Random(random);
            var leader = Ranking.Of(choice).Leader;
            var found = FlipPoints.Of(choice);
            flips += found.Length;
            for (var k = 0; k < choice.Table.Criteria.Length; k++)
            {
                var now = choice.Weights.Shares[k];
                var below = found.SingleOrDefault(flip => flip.Criterion == k && flip.Weight <= now);
                var above = found.SingleOrDefault(flip => flip.Criterion == k && flip.Weight > now);
                Assert.Equal(leader, LeaderAt(choice, k, (below?.Weight ?? 0) + near));
                Assert.Equal(leader, LeaderAt(choice, k, (above?.Weight ?? 1) - near));
                Assert.Equal(below?.Winner ?? leader, LeaderAt(choice, k, (below?.Weight ?? near) - near));
                Assert.Equal(
                    above?.Winner ?? leader,
                    LeaderAt(choice, k, (above?.Weight ?? (1 - near)) + near)
                );
            }
        }

        Assert.True(flips > 1000, $"{flips} flips");
    }

    private static int LeaderAt(Choice choice, int criterion, double weight) =>
        Ranking.Of(Questions.Under(choice, choice.Weights.With(criterion, Math.Clamp(weight, 0, 1)))).Leader;
}
