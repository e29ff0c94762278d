using CsCheck;
using Passagework.Hands;
using Passagework.Hands.Explaining;
using Passagework.Tests.Exercises.Ideas;
using static Passagework.Tests.Hands.Explaining.MoveExplanationTests;

namespace Passagework.Tests.Hands.Explaining;

public class LimitingMoveTests
{
    [Fact]
    public void In_fives_it_is_the_first_skip_back()
    {
        var move = LimitingMove.Of(Measured("groups-of-five-up"));

        Assert.Equal((5, Limit.Fretting), (move?.Note, move?.Limit));
        Assert.Equal(
            "The fretting hand sets the pace, most of all in bar 1, beat 2¼: 4:5 to 6:8, first to little finger "
                + "over a skipped string.",
            move?.Sentence
        );
    }

    [Fact]
    public void It_is_a_move_of_the_hand_that_the_ceiling_names() =>
        RandomIdeas.All.Sample(
            recipe =>
            {
                if (!Measurer.Measure(recipe, Player.At(3)).TryGet(out var measured, out _))
                {
                    return true;
                }

                var move = LimitingMove.Of(measured);
                return move?.Limit == measured.Ceiling.LimitedBy
                    && (move is null || (move.Note >= 1 && move.Note < measured.Demands.Length));
            },
            iter: 200
        );

    // A slow twin: try every window, then every load in it.
    [Fact]
    public void Hardest_move_lies_in_the_window_that_sets_the_load() =>
        Gen.Double[0.1, 2]
            .Array[1, 30]
            .Sample(
                loads =>
                {
                    var hardest = WindowedLoad.Hardest(loads, 8, 0.4);
                    var width = Math.Min(8, loads.Length);
                    var windows = Enumerable
                        .Range(0, loads.Length - width + 1)
                        .Select(start => loads.Skip(start).Take(width).ToArray())
                        .ToList();
                    var largest = windows.MaxBy(window => WindowedLoad.Of(window, 8, 0.4))!;
                    return loads[hardest] == largest.Max();
                },
                iter: 1_000
            );
}
