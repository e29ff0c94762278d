using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Rhythm;
using Passagework.Sound.Backing;
using Passagework.Sound.Performance;
using Passagework.Studio.Features.Sound;
using Passagework.Theory;

namespace Passagework.Studio.Tests.Features.Sound;

public sealed class SoundPlannerTests
{
    [Theory]
    [InlineData(9.9, "tempo")]
    [InlineData(1001, "tempo")]
    [InlineData(double.NaN, "tempo")]
    public void A_tempo_out_of_range_is_refused(double bpm, string where) =>
        Assert.Equal(where, Refused(new SoundWishes { Bpm = bpm }).Where);

    [Fact]
    public void A_chord_that_is_none_is_refused_with_its_bar()
    {
        var fault = Refused(new SoundWishes { Chords = "Am7 | H8" });

        Assert.Equal("backing bar 2", fault.Where);
        Assert.Contains("H8", fault.What, StringComparison.Ordinal);
    }

    [Fact]
    public void Bars_that_do_not_exist_are_refused() =>
        Assert.Equal("bars within 1 to 3", Refused(new SoundWishes { Bars = new BarRange(2, 2) }).Right);

    [Fact]
    public void A_groove_that_does_not_fit_the_metre_is_refused()
    {
        var line = Heard.Line();
        var rhythm = line.Line.Recipe.Rhythm with
        {
            Meter = Meter.TryParse("12/8", out var meter) ? meter : default,
        };
        line = line with { Line = line.Line with { Recipe = line.Line.Recipe with { Rhythm = rhythm } } };

        var fault = Refused(new SoundWishes { Chords = "Am7", Groove = Groove.Straight }, line);

        Assert.Equal("groove", fault.Where);
    }

    [Fact]
    public void A_loop_that_would_last_more_than_an_hour_is_refused() =>
        Assert.Contains(
            "hour",
            Refused(
                new SoundWishes { Bpm = 10, Chords = string.Join('|', Enumerable.Repeat("A", 256)) }
            ).What,
            StringComparison.Ordinal
        );

    [Fact]
    public void Strokes_that_are_not_to_be_heard_are_struck_alike()
    {
        var heard = new SoundWishes { Bpm = 200, Loops = false };
        var alike = heard with { StrokesHeard = false };

        Assert.Equal(FromADownStroke(alike), FromAnUpStroke(alike));
        Assert.NotEqual(FromADownStroke(heard), FromAnUpStroke(heard));
    }

    [Theory]
    [InlineData(3, null, 1)]
    [InlineData(1, 4, 4)]
    [InlineData(3, 2, 4)]
    [InlineData(4, 1, 1)]
    [InlineData(7, 12, 12)]
    [InlineData(7, 27, 16)]
    public void A_loop_repeats_until_chords_and_drums_come_out_even(int bars, int? chords, int repeated) =>
        Assert.Equal(repeated, LoopShape.Of(bars, chords).Repeated);

    [Theory]
    [InlineData("A", "minor pentatonic", "Am7")]
    [InlineData("C", "major", "Cmaj7")]
    [InlineData("G", "mixolydian", "G7")]
    [InlineData("E", "major pentatonic", "E")]
    [InlineData("A", "harmonic minor", "Ammaj7")]
    [InlineData("B", "locrian", "Bm7b5")]
    public void A_chord_is_offered_that_goes_with_the_scale(string root, string scale, string chord)
    {
        var name = NoteName.TryParse(root, out var parsed) ? parsed : default;
        var recipe = Library.Find("groups-of-five-up").OrThrow().Recipe with
        {
            Notes = NoteSet.TryNamed(name, scale, out var notes) ? notes : null,
        };

        Assert.Equal(chord, BackingSuggestion.For(recipe));
    }

    [Fact]
    public void Without_a_scale_no_chord_is_offered() =>
        Assert.Null(
            BackingSuggestion.For(Library.Find("groups-of-five-up").OrThrow().Recipe with { Notes = null })
        );

    [Fact]
    public void The_chord_moves_with_the_capo()
    {
        var recipe = Library.Find("groups-of-five-up").OrThrow().Recipe;

        Assert.Equal(
            "Bm7",
            BackingSuggestion.For(recipe with { Instrument = recipe.Instrument with { Capo = 2 } })
        );
    }

    private static byte[] FromADownStroke(SoundWishes wishes) => Beginning(wishes, FirstStroke.Down);

    private static byte[] FromAnUpStroke(SoundWishes wishes) => Beginning(wishes, FirstStroke.Up);

    private static byte[] Beginning(SoundWishes wishes, FirstStroke first)
    {
        var recipe = Library.Find("groups-of-five-up").OrThrow().Recipe;
        recipe = recipe with { Picking = recipe.Picking with { First = first } };
        var line = Measurer.Measure(recipe, Player.At(2)).OrThrow().Realization;
        return Heard.Plan(line, wishes).Pcm(0, 100_000);
    }

    private static Fault Refused(SoundWishes wishes, Realization? line = null) =>
        new SoundPlanner().Plan(line ?? Heard.Line(), wishes, new KeptLevels()).TryGet(out _, out var fault)
            ? throw new InvalidOperationException("It was not refused.")
            : fault;
}
