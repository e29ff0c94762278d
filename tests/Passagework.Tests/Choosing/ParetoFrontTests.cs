using CsCheck;
using Passagework.Choosing;

namespace Passagework.Tests.Choosing;

public class ParetoFrontTests
{
    [Fact]
    public void Nobody_in_the_running_example_is_dominated() =>
        Assert.Equal([null, null, null, null, null], ParetoFront.Dominators(Questions.Running()));

    [Fact]
    public void The_dominated_name_who_outdoes_them()
    {
        // Equal ones do not dominate each other; the last has a value missing.
        double[][] rows =
        [
            [0.5, 0.5],
            [0.9, 0.2],
            [0.4, 0.5],
            [0.5, 0.5],
            [0.1, double.NaN],
        ];
        Assert.Equal([null, null, 0, null, null], ParetoFront.Dominators(Questions.Of([1, 1], rows)));
    }

    [Fact]
    public void What_has_no_weight_saves_nobody() =>
        Assert.Equal(
            [null, 0],
            ParetoFront.Dominators(
                Questions.Of(
                    [1, 0],
                    [
                        [0.5, 0],
                        [0.4, 1],
                    ]
                )
            )
        );

    [Fact]
    public void The_front_equals_every_pair_compared() =>
        Questions.Coarse.Sample(choice =>
        {
            var dominators = ParetoFront.Dominators(choice);
            for (var a = 0; a < choice.Count; a++)
            {
                var outdone = Enumerable.Range(0, choice.Count).Any(b => Dominates(choice, b, a));
                Assert.Equal(outdone, dominators[a] is not null);
                if (dominators[a] is { } by)
                {
                    Assert.True(Dominates(choice, by, a));
                    Assert.Null(dominators[by]);
                }
            }
        });

    private static bool Dominates(Choice choice, int a, int b)
    {
        var gaps = choice.Table.Criteria.Select(
            (_, k) => choice.Table.Counted(a, k) - choice.Table.Counted(b, k)
        );
        return gaps.All(gap => gap >= 0) && gaps.Any(gap => gap > 0);
    }
}
