using CsCheck;
using Passagework.Choosing;

namespace Passagework.Tests.Choosing;

public class SmallestChangeTests
{
    [Fact]
    public void The_runner_up_is_a_short_way_off()
    {
        var change = SmallestChange.Of(Questions.Running())!;

        Assert.Equal(1, change.Rival);
        Assert.Equal(0.0746, change.Length, 0.00005);
        Questions.Near([0.2421, 0.3356, 0.1423, 0.2541, 0.0259], change.Weights, 0.00005);
    }

    [Fact]
    public void The_others_are_further_off()
    {
        Assert.Equal(0.1359, SmallestChange.Between(Questions.Running(), 3, 0)!.Length, 0.00005);
        Assert.Equal(0.2877, SmallestChange.Between(Questions.Running(), 3, 4)!.Length, 0.00005);
        // 0.1445 would need a weight of -0.0149.
        var bounded = SmallestChange.Between(Questions.Running(), 3, 2)!;
        Assert.Equal(0, bounded.Weights[Questions.R]);
        Assert.True(bounded.Length is > 0.1445 and < 0.150, $"{bounded.Length}");
    }

    [Fact]
    public void Who_is_nowhere_better_never_draws_level()
    {
        Assert.Null(
            SmallestChange.Of(
                Questions.Of(
                    [1, 1],
                    [
                        [0.5, 0.5],
                        [0.5, 0.4],
                    ]
                )
            )
        );
        Assert.Equal(
            0,
            SmallestChange
                .Of(
                    Questions.Of(
                        [1, 1],
                        [
                            [0.5, 0.4],
                            [0.4, 0.5],
                        ]
                    )
                )!
                .Length,
            1e-12
        );
    }

    [Fact]
    public void It_equals_the_search_over_every_set_of_weights_held_at_zero() =>
        Questions.Fine.Sample(choice =>
        {
            var leader = Ranking.Of(choice).Leader;
            var rival = (leader + 1) % choice.Count;
            var shares = choice.Weights.Shares;
            double[] lead =
            [
                .. shares.Select((_, k) => choice.Table.Counted(leader, k) - choice.Table.Counted(rival, k)),
            ];
            var change = SmallestChange.Between(choice, leader, rival);
            Assert.Equal(lead.Min() < 0, change is not null);
            if (change is null)
            {
                return;
            }

            Assert.Equal(1, change.Weights.Sum(), 1e-9);
            Assert.Equal(0, change.Weights.Zip(lead, (w, d) => w * d).Sum(), 1e-9);
            Assert.All(change.Weights, weight => Assert.True(weight >= 0));
            Assert.Equal(Slow([.. shares], lead), change.Length, 1e-6);
        });

    // For every set of criteria kept: the closed form on that set, if no weight turns negative.
    private static double Slow(double[] now, double[] lead)
    {
        var least = double.PositiveInfinity;
        for (var kept = 1; kept < 1 << now.Length; kept++)
        {
            int[] free = [.. Enumerable.Range(0, now.Length).Where(k => ((kept >> k) & 1) == 1)];
            var mean = free.Average(k => lead[k]);
            var gap = (1 - free.Sum(k => now[k])) / free.Length;
            var spread = free.Sum(k => (lead[k] - mean) * (lead[k] - mean));
            var ahead = free.Sum(k => (now[k] + gap) * lead[k]);
            var moved = new double[now.Length];
            foreach (var k in free)
            {
                moved[k] = now[k] + gap - (ahead * (lead[k] - mean) / spread);
            }

            if (spread > 1e-12 && moved.All(weight => weight >= -1e-12))
            {
                least = Math.Min(least, Math.Sqrt(moved.Zip(now, (x, w) => (x - w) * (x - w)).Sum()));
            }
        }

        return least;
    }
}
