using CsCheck;
using Passagework.Choosing;

namespace Passagework.Tests.Choosing;

public class RankingTests
{
    [Fact]
    public void The_weighted_sum_ranks_the_running_example()
    {
        var ranking = Ranking.Of(Questions.Running());

        Questions.Near(
            [0.59483, 0.61250, 0.59000, 0.65167, 0.50583],
            new WeightedSum().Scores(Questions.Running()),
            0.000005
        );
        Assert.Equal([3, 1, 0, 2, 4], ranking.Standings.Select(standing => standing.Candidate));
        Assert.Equal([1, 2, 3, 4, 5], ranking.Standings.Select(standing => standing.Place));
        Assert.False(ranking.IsTied);
    }

    [Fact]
    public void Other_weights_change_the_places_below_the_leader()
    {
        // Centroid weights handed out for the order G, U, B, H, R; then equal ones.
        var centroid = CriterionWeights.Centroid(5);
        double[] weights = [centroid[2], centroid[0], centroid[3], centroid[1], centroid[4]];

        Questions.Near(
            [0.5906, 0.6130, 0.6027, 0.6388, 0.4908],
            new WeightedSum().Scores(Questions.Running(weights)),
            0.00005
        );
        Questions.Near(
            [0.604, 0.594, 0.580, 0.690, 0.550],
            new WeightedSum().Scores(Questions.Running([1, 1, 1, 1, 1])),
            0.0000005
        );
    }

    [Fact]
    public void Equal_ones_share_a_place_and_keep_the_order_of_the_table()
    {
        var ranking = Ranking.Of(
            Questions.Of(
                [1],
                [
                    [0.2],
                    [0.5],
                    [0.9],
                    [0.5 + 9e-10],
                    [0.5],
                ]
            )
        );

        Assert.Equal([2, 1, 3, 4, 0], ranking.Standings.Select(standing => standing.Candidate));
        Assert.Equal([1, 2, 2, 2, 5], ranking.Standings.Select(standing => standing.Place));
    }

    [Fact]
    public void Two_identical_ones_tie_for_the_lead()
    {
        var ranking = Ranking.Of(
            Questions.Of(
                [1, 2],
                [
                    [0.3, 0.4],
                    [0.3, 0.4],
                ]
            )
        );

        Assert.True(ranking.IsTied);
        Assert.Equal([1, 1], ranking.Standings.Select(standing => standing.Place));
    }

    [Fact]
    public void A_missing_value_counts_as_the_middle_and_says_how_much_rests_on_it()
    {
        var ranking = Ranking.Of(
            Questions.Of(
                [3, 1],
                [
                    [0.9, double.NaN],
                    [0.4, 0.8],
                ]
            )
        );

        Assert.Equal(0, ranking.Leader);
        Assert.Equal(0.8, ranking.Standings[0].Score, 1e-12);
        Assert.Equal([0.25, 0], ranking.Standings.Select(standing => standing.MissingWeight));
    }

    [Fact]
    public void Order_of_input_and_scale_of_weights_change_nothing() =>
        (from choice in Questions.Fine from factor in Gen.Double[1e-3, 1e3] select (choice, factor)).Sample(
            pair =>
            {
                var (choice, factor) = pair;
                var table = ChoiceTable
                    .Of(choice.Table.Criteria, [.. choice.Table.Candidates.Reverse()])
                    .OrThrow();
                var weights = CriterionWeights
                    .Of(table.Criteria, [.. choice.Weights.Shares.Select(w => w * factor)])
                    .OrThrow();
                foreach (var method in RankingMethods.All)
                {
                    var there = Named(choice, method);
                    var back = Named(Choice.Of(table, weights).OrThrow(), method);
                    Assert.Equal(there.Select(x => (x.Id, x.Place)), back.Select(x => (x.Id, x.Place)));
                    Questions.Near([.. there.Select(x => x.Score)], back.Select(x => x.Score), 1e-9);
                }
            }
        );

    private static List<(string Id, int Place, double Score)> Named(Choice choice, IRankingMethod method) =>
        [
            .. Ranking
                .Of(choice, method)
                .Standings.Select(standing =>
                    (choice.Table.Candidates[standing.Candidate].Id, standing.Place, standing.Score)
                )
                .OrderBy(standing => standing.Id),
        ];
}
