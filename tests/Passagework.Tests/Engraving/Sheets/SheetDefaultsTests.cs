using Passagework.Engraving.Sheets;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Tests.Engraving.Sheets;

public sealed class SheetDefaultsTests
{
    [Fact]
    public void Words_follow_from_the_measured_exercise()
    {
        var content = SheetDefaults.Of(Played.Measured("groups-of-five-up"));

        Assert.Equal("Groups of five, rising", content.Title);
        Assert.Equal(
            "Keeping count against the beat, with skips back over a string between groups.",
            content.Purpose
        );
        Assert.Equal("by 4 when three in a row are clean; never more than 4 in a day", content.GoUp);
        Assert.Equal("10 minutes, on 5 days of the week", content.HowLong);
        Assert.Equal("strictly down and up, beginning down", content.Strokes);
        Assert.Equal(
            "The first of each group a little louder, and no gap before it. A string that is passed over must not sound.",
            content.ListenFor
        );
        Assert.Equal(
            "Begin with an up-stroke and change nothing else. "
                + "Then lean on the first of every beat instead of the first of every group.",
            content.WhenEasy
        );
    }

    // The measured ceiling is worked out elsewhere; start and goal are 0.7 and 0.95 of it, to the nearest even number.
    [Fact]
    public void Tempo_begins_below_the_ceiling_and_aims_just_under_it()
    {
        var measured = Played.Measured("groups-of-five-up");
        var bpm = measured.Bpm ?? 0;
        var words = string.Concat(SheetDefaults.Of(measured).Tempo.Select(phrase => phrase.Text));

        Assert.InRange(bpm, 73, 76);
        Assert.Equal("\uECA5 = 52, up to 70; four notes to the beat", words);
    }

    [Fact]
    public void A_room_that_plans_from_50_to_80_has_its_own_tempi()
    {
        var measured = Played.Measured("groups-of-five-up");
        var style = new RoomStyle { Plan = PlanShares.Of(50, 80).OrThrow() };

        Assert.Equal(
            "\uECA5 = 38, up to 60; four notes to the beat",
            string.Concat(SheetDefaults.Of(measured, style).Tempo.Select(phrase => phrase.Text))
        );
    }

    [Fact]
    public void Tempo_that_is_asked_for_is_the_goal()
    {
        var recipe = Played.Recipe("groups-of-five-up");
        var asked = recipe with { Rhythm = recipe.Rhythm with { TempoBpm = 60 } };

        Assert.Equal("\uECA5 = 44, up to 60; four notes to the beat", Tempo(asked));
    }

    // The felt beat of 6/8 is a dotted quarter.
    [Fact]
    public void Tempo_names_the_note_of_the_felt_beat() =>
        Assert.StartsWith(
            "\uECA5\uECB7 = ",
            Tempo(Played.Recipe("thumb-and-fingers-out-and-back")),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData("groups-of-five-up")]
    [InlineData("trill-one-three")]
    public void Caution_hands_over_to_a_doctor_or_physiotherapist(string id)
    {
        Assert.Contains(
            "If it hurts, tingles or goes numb, stop this exercise today. "
                + "If it comes back or lasts, see a doctor or physiotherapist before going on.",
            SheetDefaults.Of(Played.Measured(id)).Caution,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Long_slurs_name_the_hand_and_take_five_minutes()
    {
        var content = SheetDefaults.Of(Played.Measured("trill-one-three"));

        Assert.Contains(
            "Long slurs tire the fretting hand: one short block a day",
            content.Caution,
            StringComparison.Ordinal
        );
        Assert.Equal("5 minutes, on 5 days of the week", content.HowLong);
    }

    // Three notes on each string from 6:5: reaches from fret 5 to fret 9.
    [Fact]
    public void Wide_reach_low_on_the_neck_is_named_and_higher_up_it_is_not()
    {
        var low = Played.Measured("three-per-string-fours-up-and-down");
        var plain = Played.Measured("groups-of-five-up");

        Assert.Contains(
            "The reach is wide for the fretting hand",
            SheetDefaults.Of(low).Caution,
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("fretting hand", SheetDefaults.Of(plain).Caution, StringComparison.Ordinal);
    }

    [Fact]
    public void Work_of_one_finger_is_named()
    {
        var recipe = Played.Recipe("one-sided-rolls-low-up-and-down");

        Assert.Contains(
            "One finger does most of the work of the fretting hand",
            SheetDefaults.Of(Played.Measured(recipe)).Caution,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Every_exercise_has_all_its_words()
    {
        var bare = Library
            .All.Where(exercise =>
                SheetDefaults.Of(Played.Measured(exercise.Id)) is { } content
                && new[]
                {
                    content.Title,
                    content.Purpose,
                    content.GoUp,
                    content.HowLong,
                    content.Strokes,
                    content.ListenFor,
                    content.WhenEasy,
                    content.Caution,
                }.Any(text => text.Length == 0)
            )
            .Select(exercise => exercise.Id);

        Assert.Empty(bare);
    }

    [Theory]
    [InlineData(Technique.AllDown, "down-strokes only", "Play it with up-strokes only.")]
    [InlineData(
        Technique.Metric,
        "down on the beat and half-way, up between; the hand goes on over silent notes",
        "Play it with closed eyes and change nothing else."
    )]
    public void Strokes_and_variation_follow_the_technique(
        Technique technique,
        string strokes,
        string variation
    )
    {
        var recipe = Played.Recipe("groups-of-four-up");
        var content = SheetDefaults.Of(
            Played.Measured(recipe with { Picking = recipe.Picking with { Technique = technique } })
        );

        Assert.Equal(strokes, content.Strokes);
        Assert.StartsWith(variation, content.WhenEasy, StringComparison.Ordinal);
    }

    private static string Tempo(Recipe recipe) =>
        string.Concat(
            SheetDefaults
                .Of(Measurer.Measure(recipe, Player.At(2)).OrThrow())
                .Tempo.Select(phrase => phrase.Text)
        );
}
