using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;
using Passagework.Sound.Click;
using Passagework.Sound.Performance;
using Passagework.Tests.Rhythm;
using Passagework.Tests.Sound.Performance;

namespace Passagework.Tests.Sound.Click;

public sealed class ClickTrackTests
{
    [Theory]
    [InlineData("4/4", "2 2")]
    [InlineData("3/4", "3")]
    [InlineData("5/4", "3 2")]
    [InlineData("6/4", "3 3")]
    [InlineData("6/8", "2")]
    [InlineData("7/8", "2 2 3")]
    [InlineData("12/8", "2 2")]
    [InlineData("1/4", "1")]
    [InlineData("11/8", "2 2 2 2 3")]
    public void Beats_group_as_is_usual(string meter, string groups) =>
        Assert.Equal(groups, string.Join(' ', BeatGroups.Of(Beats.Meter(meter))));

    [Theory]
    // One bar at 120 from 0.1 s: where, and S strong, M medium, W weak, P pulse.
    [InlineData("S0.1 W0.6 M1.1 W1.6", ClickPattern.Beats)]
    [InlineData("W0.6 W1.6", ClickPattern.Backbeat)]
    [InlineData("S0.1", ClickPattern.Downbeat)]
    [InlineData("W0.35 W0.85 W1.35 W1.85", ClickPattern.Offbeat)]
    [InlineData(
        "S0.1 P0.225 P0.35 P0.475 W0.6 P0.725 P0.85 P0.975 M1.1 P1.225 P1.35 P1.475 W1.6 P1.725 P1.85 P1.975",
        ClickPattern.Subdivision
    )]
    [InlineData("G0.1 G0.35", ClickPattern.Groups)]
    [InlineData("S0.1 G0.1 G0.35 W0.6 M1.1 W1.6", ClickPattern.BeatsAndGroups)]
    public void Patterns_click_where_they_should(string expected, ClickPattern pattern)
    {
        var performance = Played.Perform(Played.Of("6:5/1D 6:8/4U | 5:5/1D 5:7/3U"));

        Assert.Equal(expected, Said(performance, new ClickPlan { Pattern = pattern }));
    }

    [Fact]
    public void The_count_in_has_every_beat_whatever_follows()
    {
        var plan = Played.At() with { CountInBars = 1 };
        var performance = Played.Perform(Played.Of("6:5/1D"), plan);

        Assert.Equal(
            "S0.1 W0.6 M1.1 W1.6 W2.6 W3.6",
            Said(performance, new ClickPlan { Pattern = ClickPattern.Backbeat })
        );
    }

    [Fact]
    public void Bars_fall_silent_in_turn()
    {
        var performance = Played.Perform(Played.Of("6:5/1D"), Played.At(120, times: 5));
        var gaps = new ClickPlan
        {
            Pattern = ClickPattern.Downbeat,
            SoundingBars = 2,
            SilentBars = 1,
        };

        Assert.Equal("S0.1 S2.1 S6.1 S8.1", Said(performance, gaps));
        Assert.Equal(
            "S0.1 S4.1 S8.1",
            Said(performance, new ClickPlan { Pattern = ClickPattern.Downbeat, EveryBars = 2 })
        );
    }

    [Fact]
    public void Offbeats_swing_with_the_line()
    {
        var performance = Played.Perform(Played.Of("6:5/1D", Played.Swung("2/3", 2)));

        Assert.StartsWith(
            "W0.433333 W0.933333",
            Said(performance, new ClickPlan { Pattern = ClickPattern.Offbeat }),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Another_grouping_moves_the_accents_and_has_to_fill_the_bar()
    {
        var recipe = new Recipe { Rhythm = new RhythmPlan { Meter = Beats.Meter("5/4") } };
        var performance = Played.Perform(Played.Of("6:5/1D", recipe));

        Assert.Equal("S0.1 W0.6 M1.1 W1.6 W2.1", Said(performance, new ClickPlan { Grouping = [2, 3] }));
        Assert.Equal(
            "grouping: groups of 2+2 beats do not fill 5/4; groups that add up to 5",
            new ClickPlan { Grouping = [2, 2] }
                .Check(recipe.Rhythm.Meter)
                ?.ToString()
        );
    }

    [Theory]
    [InlineData(44_100)]
    [InlineData(48_000)]
    public void A_click_begins_at_its_very_sample(int sampleRate)
    {
        var plan = Played.At(93) with { CountInBars = 1 };
        var performance = Played.Perform(Played.Of("6:5/1D"), plan);
        var strokes = ClickTrack.Strokes(performance, new ClickPlan { Pattern = ClickPattern.Subdivision });
        var track = ClickTrack.Sound(strokes, sampleRate);
        var sound = new float[track.SamplesNeeded];
        track.Render(sound, 0);

        foreach (var stroke in strokes)
        {
            var at = (int)Math.Round(stroke.Seconds * sampleRate);
            Assert.Equal(0, sound[at - 1]);
            Assert.True(Math.Abs(sound[at]) > 0.01, $"{stroke}");
        }
    }

    private static string Said(TimedPerformance performance, ClickPlan plan) =>
        string.Join(
            ' ',
            ClickTrack
                .Strokes(performance, plan)
                .Select(stroke =>
                    FormattableString.Invariant($"{$"{stroke.Weight}"[0]}{stroke.Seconds:0.######}")
                )
        );
}
