using System.Collections.Immutable;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Sheets;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Notation;
using Passagework.Theory;

namespace Passagework.Tests.Engraving.Sheets;

/// <summary>What is written at bars of which only some are printed. Groups of five, up and down: five bars of sixteen notes.</summary>
public sealed class BarMarksTests
{
    private static readonly Line Fives = Played.Of("groups-of-five-up-and-down").Line;

    private static readonly ScoreOptions Options = new()
    {
        Bends =
        [
            new ScoreBend(3, Fraction.One),
            new ScoreBend(34, Fraction.One),
            new ScoreBend(70, Fraction.One),
        ],
        Vibratos = [40, 71],
        Chords = [Chord(Fraction.Zero, "Am7"), Chord(Fraction.Of(5, 2), "D7"), Chord(Fraction.Of(4), "E7")],
        Words = [new ScoreWords(Fraction.Of(9, 4), "softly"), new ScoreWords(Fraction.Of(3), "louder")],
        Repeats = [new ScoreRepeat(3, 3), new ScoreRepeat(1, 4)],
        Endings = [new ScoreEnding(3, 3, "1."), new ScoreEnding(4, 4, "2.")],
    };

    [Fact]
    public void Marks_of_a_later_bar_are_counted_from_it()
    {
        var third = new BarMarks(Fives, Options).In(new BarSpan(2, 3));

        Assert.Equal([2], third.Bends.Select(bend => bend.Note));
        Assert.Equal([8], third.Vibratos);
        Assert.Equal(["1/4 softly"], third.Words.Select(words => $"{words.Onset} {words.Text}"));
        Assert.Equal([new ScoreRepeat(1, 1)], third.Repeats);
        Assert.Equal([new ScoreEnding(1, 1, "1.")], third.Endings);
    }

    [Fact]
    public void The_chord_that_sounds_on_is_named_again() =>
        Assert.Equal(
            ["0 Am7", "1/2 D7"],
            new BarMarks(Fives, Options)
                .In(new BarSpan(2, 3))
                .Chords.Select(chord => $"{chord.Onset} {ScoreTexts.Symbol(chord.Chord)}")
        );

    [Fact]
    public void What_is_lost_with_its_bars_is_told_in_one_remark()
    {
        var marks = new BarMarks(Fives, Options);

        Assert.Equal(
            [
                "left out with their bars: one bend, one vibrato, one chord symbol, one text, one repeat, one ending",
            ],
            marks.Lost(new BarSpan(0, 2), new BarSpan(2, 3))
        );
        Assert.Empty(marks.Lost(new BarSpan(0, 5)));
    }

    [Theory]
    [InlineData(80, 1, 1, "a bend at note 80; a note from 0 to 79")]
    [InlineData(-1, 1, 1, "a bend at note -1; a note from 0 to 79")]
    [InlineData(3, 1, 6, "a repeat from bar 1 to bar 6; bars from 1 to 5, in order")]
    public void What_no_note_or_bar_can_have_is_refused(int note, int first, int last, string expected)
    {
        var options = new ScoreOptions
        {
            Bends = [new ScoreBend(note, Fraction.One)],
            Repeats = [new ScoreRepeat(first, last)],
        };
        var content = new SheetContent { Title = "Fives" };
        var made = SheetMaker.Make(
            Played.Of("groups-of-five-up-and-down"),
            content,
            new SheetOptions { Music = options }
        );

        Assert.False(made.TryGet(out _, out var fault));
        Assert.Equal(expected, fault!.ToString());
    }

    // The pick-up is bar 0; the bar after it, which a later part begins with, is bar 1 in both.
    [Fact]
    public void Bars_after_a_pick_up_keep_their_numbers()
    {
        var recipe = Played.Recipe("groups-of-five-up");
        recipe = recipe with { Rhythm = recipe.Rhythm with { StartOffset = Fraction.Of(3, 4) } };
        var marks = new BarMarks(
            Played.Of(recipe).Line,
            new ScoreOptions { Repeats = [new ScoreRepeat(1, 2)] }
        );

        Assert.Equal([new ScoreRepeat(1, 2)], marks.In(new BarSpan(1, 3)).Repeats);
        Assert.Equal([new ScoreRepeat(1, 2)], marks.In(new BarSpan(0, 3)).Repeats);
    }

    private static ScoreChord Chord(Fraction onset, string name) =>
        Passagework.Theory.Chord.TryParse(name, out var chord)
            ? new ScoreChord(onset, chord)
            : throw new InvalidOperationException(name);
}
