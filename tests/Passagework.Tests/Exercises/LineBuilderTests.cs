using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Tests.Instrument;
using static Passagework.Tests.Exercises.ShortIdeas;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Tests.Exercises;

public class LineBuilderTests
{
    [Fact]
    public void Build_sounds_with_the_capo()
    {
        var idea = Box1(0) with { Instrument = Necks.Tuned("standard", capo: 2) };

        var line = Line(idea);

        Assert.Equal("6:5", line.Notes[0].Place.ToString());
        Assert.Equal(47, line.Notes[0].Midi);
        Assert.Equal(47, line.Notes[0].Pitch.Midi);
    }

    [Fact]
    public void Build_gives_the_keys_of_box_1() =>
        // Box 1 of A minor pentatonic, sounding (equal temperament, C4 = 60).
        Assert.Equal(
            [45, 48, 50, 52, 55, 57, 60, 62, 64, 67, 69, 72],
            Line(Box1(0)).Notes.Select(note => note.Midi)
        );

    [Fact]
    public void Build_refuses_a_cell_that_leaves_the_path() =>
        Assert.Equal(
            "$.cell.offsets: the cell spans 13 notes and there are only 12 to move over; at most 12 notes wide, or a "
                + "layout with more notes",
            Refuse(Box1(0, 12)).ToString()
        );

    [Fact]
    public void Build_refuses_an_empty_cell() =>
        Assert.Equal("$.cell.offsets: has 0 entries; 1 to 16", Refuse(Box1()).ToString());

    [Fact]
    public void Build_refuses_a_cell_of_rests() =>
        Assert.Equal(
            "$.cell.offsets: the cell holds only rests; at least one note",
            Refuse(Box1(null, null)).ToString()
        );

    [Fact]
    public void Build_says_where_a_layout_is_impossible() =>
        Assert.Equal(
            "$.layout: needs fret 27 on string 1, and the neck ends at fret 22; begin lower on the neck",
            Refuse(Box1(0) with { Layout = new Layout.PerString(3, Place.At(6, 10)) }).ToString()
        );

    [Fact]
    public void Build_says_which_field_of_a_layout_is_wrong() =>
        Assert.Equal(
            "$.layout.number: there is no box 6 of A minor pentatonic; a box begins on each of its notes: 1 to 5",
            Refuse(Box1(0) with { Layout = new Layout.Box(6, 5) }).ToString()
        );

    [Theory]
    [InlineData(12, null, "$.movement.from: there is no note 12 in the layout; it has notes 0 to 11")]
    [InlineData(null, 12, "$.movement.to: there is no note 12 in the layout; it has notes 0 to 11")]
    [InlineData(5, 4, "$.movement.to: ends before it begins; 5 or more")]
    public void Build_refuses_a_part_that_the_path_has_not(int? from, int? to, string expected) =>
        Assert.Equal(
            expected,
            Refuse(
                    Box1(0) with
                    {
                        Movement = new Movement { From = from, To = to },
                    }
                )
                .ToString()
        );

    [Fact]
    public void Build_refuses_a_step_of_zero_without_repeat() =>
        Assert.Equal(
            "$.movement.step: a step of 0 stays on the first cell; with 'repeat' above 1",
            Refuse(Box1(0) with { Movement = new Movement { Step = 0 } }).ToString()
        );

    [Fact]
    public void Build_refuses_a_line_that_is_too_long() =>
        Assert.Equal(
            "$.movement.repeat: the line would have 239976 notes and rests; at most 20000",
            Refuse(
                    Box1(0) with
                    {
                        Movement = new Movement { Repeat = 9999, Direction = Direction.UpAndDown },
                    }
                )
                .ToString()
        );

    [Fact]
    public void Build_refuses_a_lock_on_a_note_that_the_line_has_not() =>
        Assert.Equal(
            "$.fretting.locks[0].note: there is no note 12 to lock; the line has notes 0 to 11",
            Refuse(Box1(0) with { Fretting = new FrettingPlan { Locks = [new Lock(12, Finger: 1)] } })
                .ToString()
        );

    [Fact]
    public void Build_keeps_the_recipe() => Assert.Equal(Box1(0), Line(Box1(0)).Recipe);
}
