using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Scores;
using Passagework.Engraving.Strips;

namespace Passagework.Tests.Engraving.Scores;

/// <summary>Marks that do not overlap and would still be read as one if they stood close side by side.</summary>
public sealed class NeighbourTests
{
    // A good half of a staff space of 1.75 mm beside, and a little over.
    private const double ApartMm = 1;
    private const double OverMm = 0.5;

    [Fact]
    public void A_stroke_stands_over_a_tuplet_number_not_close_beside_it() =>
        Assert.Empty(
            Played.All.SelectMany(exercise =>
                ScoreEngraver
                    .Engrave(exercise.Played, new ScoreOptions { ShortLast = true })
                    .OrThrow()
                    .Systems.SelectMany(system => Close(system.Marks, "tuplet", "stroke"))
                    .Select(pair => $"{exercise.Id}: {pair}")
            )
        );

    [Fact]
    public void A_sign_of_a_move_is_clear_of_the_name_of_the_hand() =>
        Assert.Empty(
            Played.All.SelectMany(exercise =>
            {
                var measured = Played.Measured(exercise.Id);
                var score = ScoreEngraver.Engrave(exercise.Played, new ScoreOptions()).OrThrow();
                return HandsStrip
                    .Of(measured, 60)
                    .OrThrow()
                    .Under(score)
                    .Systems.SelectMany(system => Close(system.Marks, "strip-name", "move-sign"))
                    .Select(pair => $"{exercise.Id}: {pair}");
            })
        );

    // Open strings say nothing of the hand; the first fretted note does, and it is there from the beginning.
    [Fact]
    public void The_first_position_stands_in_the_margin_also_after_open_strings()
    {
        var system = ScoreEngraver
            .Engrave(Played.Of("thumb-and-fingers-rolling"), new ScoreOptions())
            .OrThrow()
            .Systems[0];
        var position = system.Marks.First(mark => mark.Kind == "position");

        Assert.Equal(0, Played.Of("thumb-and-fingers-rolling").Notes[0].Finger);
        Assert.True(MarkBox.Of(position).Right < system.MusicStartMm);
    }

    // Fingers and counts are figures of one size, one under the other where there is only tab.
    [Fact]
    public void Counts_are_a_space_clear_of_fingers()
    {
        var options = new ScoreOptions { Layout = ScoreLayout.Tab };
        var marks = ScoreEngraver.Engrave(Played.Of("groups-of-five-up"), options).OrThrow().Systems[0].Marks;
        var fingers = marks.Where(mark => mark.Kind == "finger").Max(mark => MarkBox.Of(mark).Bottom);

        Assert.True(
            marks.Where(mark => mark.Kind == "count").Min(mark => MarkBox.Of(mark).Top) - fingers > 1.75
        );
    }

    private static IEnumerable<string> Close(IEnumerable<Mark> marks, string kind, string other)
    {
        var of = marks.Where(mark => mark.Kind == kind || mark.Kind == other).ToLookup(mark => mark.Kind);
        return from one in of[kind]
            let box = MarkBox.Of(one)
            let around = new Box(box.Left - ApartMm, box.Top - OverMm, box.Right + ApartMm, box.Bottom)
            from near in of[other]
            where MarkBox.Of(near).Overlaps(around)
            select $"{one.Id} and {near.Id}";
    }
}
