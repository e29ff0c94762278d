using Passagework.Instrument;
using static Passagework.Tests.Instrument.Necks;

namespace Passagework.Tests.Instrument;

public class LayoutFaultTests
{
    [Fact]
    public void Lay_names_the_fret_that_a_run_needs_beyond_the_neck() =>
        Assert.Equal(
            "needs fret 27 on string 1, and the neck ends at fret 22; begin lower on the neck",
            Refuse(new Layout.PerString(3, At("6:10")), Notes("A", "minor pentatonic")).ToString()
        );

    [Fact]
    public void Lay_counts_the_frets_left_above_a_capo() =>
        Assert.Equal(
            ".near: no box can lie near fret 14; with the capo at 9 the neck ends at fret 13",
            Refuse(new Layout.Box(1, 14), Notes("A", "minor pentatonic"), Tuned("standard", capo: 9))
                .ToString()
        );

    [Fact]
    public void Lay_refuses_a_box_that_the_capo_leaves_no_room_for() =>
        Assert.Equal(
            "needs fret 8 on string 6, and with the capo at 12 the neck ends at fret 7; begin lower on the neck",
            Refuse(
                    new Layout.Box(1, 5),
                    Notes("A", "minor pentatonic"),
                    Tuned("standard", frets: 19, capo: 12)
                )
                .ToString()
        );

    [Theory]
    [InlineData("minor pentatonic", 6, "A minor pentatonic", 5)]
    [InlineData("natural minor", 8, "A natural minor", 7)]
    [InlineData("minor triad", 0, "A minor triad", 3)]
    public void Lay_refuses_a_box_number_that_the_set_has_not(
        string scale,
        int number,
        string name,
        int boxes
    ) =>
        Assert.Equal(
            $".number: there is no box {number} of {name}; a box begins on each of its notes: 1 to {boxes}",
            Refuse(new Layout.Box(number, 5), Notes("A", scale)).ToString()
        );

    [Fact]
    public void Lay_refuses_a_string_that_the_instrument_has_not() =>
        Assert.Equal(
            ".from: there is no string 6; the instrument has strings 1 to 4",
            Refuse(new Layout.PerString(3, At("6:5")), Notes("A", "minor pentatonic"), Tuned("bass"))
                .ToString()
        );

    [Fact]
    public void Lay_refuses_to_start_outside_the_scale_and_names_its_neighbours() =>
        Assert.Equal(
            ".from: 6:6 is no note of the scale; nearest: 6:5 or 6:8",
            Refuse(new Layout.Diagonal([2, 3], At("6:6")), Notes("A", "minor pentatonic")).ToString()
        );

    [Fact]
    public void Lay_refuses_a_run_that_would_fall_below_the_nut() =>
        // A tuning in sixths: two pentatonic notes on each string climb less than the strings do.
        Assert.Equal(
            "on string 3 a note would lie below the nut; begin higher, or take fewer notes on each string",
            Refuse(new Layout.PerString(2, At("4:0")), Notes("C", "minor pentatonic"), Tuned("C2 A2 F#3 D#4"))
                .ToString()
        );

    [Fact]
    public void Lay_refuses_a_box_that_lies_nowhere_above_the_nut() =>
        Assert.Equal(
            ".number: this box has notes below the nut wherever it lies; use fewer strings",
            Refuse(new Layout.Box(1, 5), Notes("A", "minor pentatonic"), Tuned("C0 C0 C0 E6")).ToString()
        );

    [Fact]
    public void Lay_refuses_boxes_that_are_not_neighbours() =>
        Assert.Equal(
            ".boxes: box 3 does not follow box 1; [1, 2]",
            Refuse(new Layout.Joined(1, 3, 5), Notes("A", "minor pentatonic")).ToString()
        );

    [Fact]
    public void Lay_refuses_strings_that_do_not_climb() =>
        Assert.Equal(
            ".strings: [1, 2] does not climb from string to string; [2, 1]",
            Refuse(new Layout.StringPair([1, 2], [1], 5), Notes("A", "minor pentatonic")).ToString()
        );

    [Fact]
    public void Lay_refuses_a_place_beyond_the_neck() =>
        Assert.Equal(
            ".places[1]: 1:23 needs fret 23; the neck ends at fret 22",
            Refuse(new Layout.Given([At("6:5"), At("1:23")]), Notes("A", "minor pentatonic")).ToString()
        );

    [Fact]
    public void Lay_refuses_an_empty_list_of_places() =>
        Assert.Equal(
            ".places: the list of places is empty; at least one place, such as \"6:5\"",
            Refuse(new Layout.Given([]), Notes("A", "minor pentatonic")).ToString()
        );

    [Theory]
    [InlineData(12, 5, ".to: the run ends at fret 5, below its start at fret 12")]
    [InlineData(5, 24, ".to: needs fret 24 on string 1; the neck ends at fret 22")]
    [InlineData(6, 6, ".to: no note of the scale lies between these frets; widen the range")]
    public void Lay_refuses_a_run_along_one_string(int from, int to, string expected) =>
        Assert.StartsWith(
            expected,
            Refuse(new Layout.OneString(1, from, to), Notes("A", "minor pentatonic")).ToString(),
            StringComparison.Ordinal
        );

    [Theory]
    [InlineData(1)]
    [InlineData(5)]
    public void Lay_refuses_a_count_of_notes_out_of_range(int count) =>
        Assert.Equal(
            $".count: {count} is out of range; 2 to 4",
            Refuse(new Layout.PerString(count, At("6:5")), Notes("A", "minor pentatonic")).ToString()
        );

    [Fact]
    public void Lay_refuses_a_pattern_with_an_empty_string() =>
        Assert.Equal(
            ".pattern[1]: 0 is out of range; 1 to 12",
            Refuse(new Layout.Diagonal([2, 0], At("6:5")), Notes("A", "minor pentatonic")).ToString()
        );

    [Fact]
    public void Lay_refuses_a_chain_without_boxes() =>
        Assert.Equal(
            ".boxes: has 0 entries; 1 to 64",
            Refuse(new Layout.Chain([2, 1], [], 5), Notes("A", "minor pentatonic")).ToString()
        );
}
