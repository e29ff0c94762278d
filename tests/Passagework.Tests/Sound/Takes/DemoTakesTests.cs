using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Sound.Takes;

namespace Passagework.Tests.Sound.Takes;

public sealed class DemoTakesTests
{
    [Fact]
    public void Every_fault_has_its_take_and_every_student_one()
    {
        var ids = DemoTakes.All.Select(idea => idea.Id).ToList();

        Assert.Equal(ids.Distinct(), ids);
        string[] wanted =
        [
            "faultless",
            "rushing",
            "uneven-groups",
            "late-after-skips",
            "ringing",
            "missed-notes",
            "wrong-notes",
            "too-quiet",
            "clipped",
            "room-noise",
            "bram",
            "isolde",
            "kofi",
            "yuna",
            "tomas",
        ];
        Assert.Empty(wanted.Except(ids));
    }

    [Theory]
    [InlineData("faultless", 0, 0, 0)]
    [InlineData("missed-notes", 4, 0, 0)]
    [InlineData("wrong-notes", 0, 4, 0)]
    [InlineData("extra-notes", 0, 0, 3)]
    [InlineData("bram", 2, 0, 0)]
    public void Slips_of_a_take_are_those_that_its_words_count(string id, int missed, int wrong, int extra)
    {
        var kinds = Taken.Make(Taken.Demo(id)).Truth.Select(note => note.Kind).ToList();

        Assert.Equal(
            (missed, wrong, extra),
            (
                kinds.Count(k => k == TruthKind.Missed),
                kinds.Count(k => k == TruthKind.Wrong),
                kinds.Count(k => k == TruthKind.Extra)
            )
        );
    }

    [Theory]
    [InlineData("late-after-skips", 25)]
    [InlineData("tomas", 22)]
    public void Skipping_takes_skip_strings_and_are_late_behind_them(string id, double ms)
    {
        var take = Taken.Make(Taken.Demo(id));
        var skips = take.Truth.Where(n => Math.Abs(n.Crossing) > 1).Select(n => n.DeviationMs).ToList();
        var others = take.Truth.Where(n => Math.Abs(n.Crossing) <= 1).Select(n => n.DeviationMs);

        Assert.True(skips.Count >= 6, $"{skips.Count}");
        Assert.InRange(skips.Average() - others.Average(), ms - 5, ms + 5);
    }

    [Fact]
    public void Sweeps_come_round_the_turn_too_early()
    {
        var truth = Taken.Make(Taken.Demo("kofi")).Truth;
        var turn = truth.Where(n => n.InGroup?.Place == 3).Select(n => n.DeviationMs).ToList();

        Assert.Equal(8, turn.Count);
        Assert.InRange(turn.Average(), -30, -22);
        // The turn is where the strings are crossed the other way.
        Assert.All(truth.Where(n => n.InGroup?.Place == 2), n => Assert.True(n.Crossing != 0));
    }

    [Fact]
    public void A_take_drawn_by_chance_is_the_same_each_time_and_unlike_its_neighbour()
    {
        Assert.Equal(TakePlans.Random(7), TakePlans.Random(7));
        Assert.NotEqual(TakePlans.Random(7).Plan, TakePlans.Random(8).Plan);
    }

    [Fact]
    public void Takes_drawn_by_chance_can_be_played_and_reach_every_value()
    {
        var ideas = Enumerable.Range(0, 400).Select(seed => TakePlans.Random((uint)seed)).ToList();

        Assert.All(ideas, idea => Assert.Null(idea.Plan.Check()));
        Assert.Equal(6, ideas.Select(idea => idea.Plan.AskedBpm).Distinct().Count());
        Assert.Equal(3, ideas.Select(idea => idea.Exercise).Distinct().Count());
        Assert.Equal(4, ideas.Select(idea => idea.Guitar).Distinct().Count());
        Assert.Equal([0.0, 10, 20, 35], ideas.Select(idea => idea.Plan.SpreadMs).Distinct().Order());
        Assert.InRange(ideas.Count(idea => idea.Plan.MissedShare > 0) / 400.0, 0.5, 0.7);
        Assert.InRange(ideas.Count(idea => idea.Plan.NoiseUnderDb is null) / 400.0, 0.55, 0.78);
        Assert.All(
            ideas.Take(60),
            idea =>
            {
                var lowest = LineBuilder
                    .Build(idea.Recipe().OrThrow())
                    .OrThrow()
                    .Notes.Min(n => n.Place!.Value.Fret);
                Assert.InRange(lowest, 1, 10);
            }
        );
    }
}
