using Passagework.Exercises;
using Passagework.Foundation;
using static Passagework.Tests.Exercises.ShortIdeas;

namespace Passagework.Tests.Exercises;

/// <summary>
/// Endings on a path along string 1, open string E: the root C lies at frets 8 and 20, fret and path index are the
/// same; 4/4 in sixteenths, worked by hand.
/// </summary>
public class EndingTests
{
    [Fact]
    public void Hold_last_lets_the_last_note_sound_to_the_end_of_its_bar() =>
        Assert.Equal("0+1/16 1/16+1/16 1/8+7/8", Times(Ended(Ending.HoldLast, 3, 0, 1, 2)));

    [Fact]
    public void Hold_last_changes_nothing_on_a_bar_line() =>
        Assert.Equal(Fraction.Of(1, 16), Line(Idea(Ending.HoldLast, 16, 0)).Notes[^1].Duration);

    [Fact]
    public void Hold_last_sounds_in_place_of_the_rest_after_it() =>
        Assert.Equal("0+1/16 1/16+15/16", Times(Ended(Ending.HoldLast, 2, 0, 1, null)));

    [Fact]
    public void Hold_root_adds_the_nearest_root_to_the_end_of_the_bar()
    {
        var line = Ended(Ending.HoldRoot, 12, 9, 10, 11);

        Assert.Equal("9 10 11 | + 8", Frets(line));
        Assert.Equal("0+1/16 1/16+1/16 1/8+1/16 3/16+13/16", Times(line));
        Assert.Null(line.Notes[^1].Group);
        Assert.Null(line.Notes[^1].InGroup);
        Assert.Equal(3, line.Notes[^1].Index);
    }

    [Fact]
    public void Hold_root_adds_a_whole_bar_on_a_bar_line()
    {
        var line = Line(Idea(Ending.HoldRoot, 16, 0));

        Assert.Equal(Fraction.One, line.Notes[^1].Onset);
        Assert.Equal(Fraction.One, line.Notes[^1].Duration);
        Assert.Equal(8, line.Notes[^1].Place?.Fret);
    }

    [Theory]
    [InlineData(13, 8)]
    [InlineData(14, 8)]
    [InlineData(15, 20)]
    public void Hold_root_gives_a_tie_to_the_lower_root(int last, int root)
    {
        var idea = Idea(Ending.HoldRoot, 22, last);

        var line = Line(idea with { Movement = idea.Movement with { Step = 0, Repeat = 2 } });

        Assert.Equal(root, line.Notes[^1].Place?.Fret);
    }

    [Fact]
    public void Hold_root_strikes_the_root_again_after_a_root() =>
        Assert.Equal("7 8 | + 8", Frets(Ended(Ending.HoldRoot, 9, 7, 8)));

    [Fact]
    public void Fill_bar_walks_to_the_root_and_holds_it()
    {
        var line = Ended(Ending.FillBar, 12, 9, 11);

        Assert.Equal("9 11 | + 10 9 8", Frets(line));
        Assert.Equal("0+1/16 1/16+1/16 1/8+1/16 3/16+1/16 1/4+3/4", Times(line));
    }

    [Fact]
    public void Fill_bar_holds_a_last_note_that_is_the_root() =>
        Assert.Equal("0+1/16 1/16+15/16", Times(Ended(Ending.FillBar, 9, 7, 8)));

    [Fact]
    public void Fill_bar_adds_nothing_on_a_bar_line() =>
        Assert.Equal(16, Line(Idea(Ending.FillBar, 16, 0)).Notes.Length);

    [Fact]
    public void Fill_bar_stops_at_the_bar_line_before_it_has_reached_the_root()
    {
        var line = Line(
            Idea(Ending.FillBar, 22, 0) with
            {
                Movement = new Movement
                {
                    From = 0,
                    To = 13,
                    Ending = Ending.FillBar,
                },
            }
        );

        // 14 notes, fret 13 the last; two pulses are left in the bar, the root C at fret 8 is five steps away.
        Assert.Equal("12 11", string.Join(' ', line.Notes.Skip(14).Select(note => note.Place?.Fret)));
        Assert.Equal(Fraction.One, line.End);
    }

    [Fact]
    public void Fill_bar_cuts_a_pulse_at_the_bar_line()
    {
        var line = Line(
            Idea(Ending.FillBar, 22, 0) with
            {
                Cell = new Cell { Offsets = [12], Durations = [Fraction.Of(31, 2)] },
                Movement = new Movement { To = 12, Ending = Ending.FillBar },
            }
        );

        Assert.Equal("0+31/32 31/32+1/32", Times(line));
        Assert.Equal("12 | + 11", Frets(line));
    }

    [Theory]
    [InlineData(Ending.HoldRoot)]
    [InlineData(Ending.FillBar)]
    public void Build_refuses_to_end_on_a_root_that_the_path_has_not(Ending ending) =>
        Assert.Equal(
            "$.movement.ending: the part of the layout that is used has no root to end on; the ending 'none' or "
                + "'hold-last', or a layout with a root",
            Refuse(Idea(ending, 8, 0)).ToString()
        );

    [Fact]
    public void Endings_read_the_root_as_if_the_capo_were_the_nut()
    {
        var idea = Idea(Ending.HoldRoot, 12, 9, 10, 11);

        var line = Line(idea with { Instrument = idea.Instrument with { Capo = 3 } });

        Assert.Equal("9 10 11 | + 8", Frets(line));
        Assert.Equal(64 + 3 + 8, line.Notes[^1].Midi);
    }

    private static Line Ended(Ending ending, int pathLength, params int?[] offsets) =>
        Line(Idea(ending, pathLength, offsets));

    private static Recipe Idea(Ending ending, int pathLength, params int?[] offsets) =>
        OnSteps(pathLength, offsets) with
        {
            Movement = new Movement { Ending = ending },
        };
}
