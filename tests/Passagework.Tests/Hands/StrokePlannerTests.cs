using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Tests.Hands;

/// <summary>Silence, slurs and what a teacher has fixed.</summary>
public partial class StrokePlannerTests
{
    [Fact]
    public void Metric_alternation_keeps_the_beat_over_silence()
    {
        // Sixteenths with the third left out, an eighth before the bar's second beat: D U (D) U D
        var pulse = Fraction.Of(1, 16);
        var line = Lines.Of("5:5 5:7 4:5 4:7", Lines.With(Technique.Metric));
        var onsets = new[] { 0, 1, 3, 4 };
        line = line with
        {
            Notes =
            [
                .. line.Notes.Select(note => note with { Onset = pulse * Fraction.Of(onsets[note.Index]) }),
            ],
        };

        var strokes = Realizer.Plan(line, Player.At(2)).OrThrow().Strokes.Strokes;

        Assert.Equal("DUUD", string.Concat(strokes.Select(PickingCounts.LetterOf)));
    }

    [Fact]
    public void Strokes_begin_again_after_a_rest_of_a_beat()
    {
        var line = Lines.Of("5:5 5:7 4:5 4:7", Lines.With(Technique.Alternate, FirstStroke.Up));
        var late = Fraction.Of(1, 4);
        line = line with
        {
            Notes =
            [
                .. line.Notes.Select(note => note.Index < 3 ? note : note with { Onset = note.Onset + late }),
            ],
        };

        var strokes = Realizer.Plan(line, Player.At(2)).OrThrow().Strokes.Strokes;

        Assert.Equal("UDUU", string.Concat(strokes.Select(PickingCounts.LetterOf)));
    }

    [Fact]
    public void Locked_stroke_is_kept_and_the_others_follow_from_it()
    {
        var recipe = Lines.With(Technique.Alternate) with
        {
            Fretting = new FrettingPlan { Locks = [new(2, Stroke: Stroke.Up)] },
        };

        var strokes = Realizer.Plan(Lines.Of(Lines.BoxUp, recipe), Player.At(2)).OrThrow().Strokes.Strokes;

        Assert.Equal("DUUDUDUDUDUD", string.Concat(strokes.Select(PickingCounts.LetterOf)));
    }

    [Fact]
    public void Lock_on_no_stroke_changes_nothing_where_the_note_must_be_struck()
    {
        // A repeated note can't be slurred. The lock on note 1 lifts the technique's rule there and nowhere else.
        var recipe = Lines.With(Technique.AllUp) with
        {
            Fretting = new FrettingPlan
            {
                Locks = [new(1, Stroke: Stroke.Down), new(2, Stroke: Stroke.None)],
            },
        };

        var strokes = Realizer
            .Plan(Lines.Of("4:5 4:5 4:5 4:5 4:5", recipe), Player.At(4))
            .OrThrow()
            .Strokes.Strokes;

        Assert.Equal("UDUUU", string.Concat(strokes.Select(PickingCounts.LetterOf)));
    }

    [Theory]
    [InlineData("5:5 h4:0", "DU")]
    [InlineData("5:5 h5:0", "D-")]
    [InlineData("5:5 h4:7", "D-")]
    [InlineData("5:5 h5:5", "DU")]
    public void Open_string_after_another_and_a_repeated_note_are_struck_whatever_slur_is_written(
        string places,
        string expected
    )
    {
        var strokes = Realizer.Plan(Lines.Of(places), Player.At(2)).OrThrow().Strokes.Strokes;

        Assert.Equal(expected, string.Concat(strokes.Select(PickingCounts.LetterOf)));
    }

    [Fact]
    public void Best_first_stroke_is_the_cheaper_one()
    {
        // Straight up the box from D every change is inside, from U outside, which is cheaper (three preferences
        // for down-strokes on beats are smaller).
        var line = Lines.Of(Lines.BoxUp, Lines.With(Technique.Alternate, FirstStroke.Best));

        Assert.Equal(Stroke.Up, Realizer.Plan(line, Player.At(2)).OrThrow().Strokes.Strokes[0]);
    }
}
