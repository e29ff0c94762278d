using Passagework.Instrument;
using static Passagework.Tests.Instrument.Necks;

namespace Passagework.Tests.Instrument;

/// <summary>Boxes. Fret tables are common practice, computed for the project and checked by hand.</summary>
public class BoxLayoutTests
{
    [Theory]
    [InlineData(1, 5, "6:5 8 5:5 7 4:5 7 3:5 7 2:5 8 1:5 8")]
    [InlineData(2, 8, "6:8 10 5:7 10 4:7 10 3:7 9 2:8 10 1:8 10")]
    [InlineData(3, 10, "6:10 12 5:10 12 4:10 12 3:9 12 2:10 13 1:10 12")]
    [InlineData(4, 12, "6:12 15 5:12 15 4:12 14 3:12 14 2:13 15 1:12 15")]
    [InlineData(5, 15, "6:15 17 5:15 17 4:14 17 3:14 17 2:15 17 1:15 17")]
    [InlineData(5, 5, "6:3 5 5:3 5 4:2 5 3:2 5 2:3 5 1:3 5")]
    [InlineData(4, 5, "6:0 3 5:0 3 4:0 2 3:0 2 2:1 3 1:0 3")]
    public void Lay_gives_the_five_boxes_of_A_minor_pentatonic(int number, int near, string expected) =>
        Assert.Equal(expected, Lay(new Layout.Box(number, near), Notes("A", "minor pentatonic")));

    [Fact]
    public void Lay_gives_every_box_in_every_key_by_the_formula_from_the_root_fret()
    {
        // Offsets from F, the fret of the root on string 6 (common practice); string 6 first.
        int[][] offsets =
        [
            [0, 3, 0, 2, 0, 2, 0, 2, 0, 3, 0, 3],
            [3, 5, 2, 5, 2, 5, 2, 4, 3, 5, 3, 5],
            [5, 7, 5, 7, 5, 7, 4, 7, 5, 8, 5, 7],
            [7, 10, 7, 10, 7, 9, 7, 9, 8, 10, 7, 10],
            [10, 12, 10, 12, 9, 12, 9, 12, 10, 12, 10, 12],
        ];
        var keys = "E F F# G G# A Bb B C C# D Eb".Split(' ');
        var neck = Tuned("standard", frets: 24);

        for (var rootFret = 0; rootFret < 12; rootFret++)
        {
            for (var number = 1; number <= 5; number++)
            {
                var row = offsets[number - 1];
                var expected = row.Select((offset, index) => Place.At(6 - (index / 2), rootFret + offset));
                var layout = new Layout.Box(number, rootFret + row[0]);

                Assert.Equal(Short(expected), Lay(layout, Notes(keys[rootFret], "minor pentatonic"), neck));
            }
        }
    }

    [Theory]
    [InlineData("A", "natural minor", 1, "6:5 7 8 5:5 7 8 4:5 7 3:4 5 7 2:5 6 8 1:5 7 8")]
    [InlineData("A", "minor blues", 1, "6:5 8 5:5 6 7 4:5 7 3:5 7 8 2:5 8 1:5 8")]
    [InlineData("A", "major pentatonic", 1, "6:5 7 5:4 7 4:4 7 3:4 6 2:5 7 1:5 7")]
    [InlineData("A", "minor triad", 1, "6:5 8 5:7 4:7 3:5 2:5 1:5 8")]
    [InlineData("A", "chromatic", 1, "6:5 6 7 8 5:4 5 6 7 8 4:4 5 6 7 8 3:4 5 6 7 8 2:5 6 7 8 1:4 5 6 7 8")]
    [InlineData("C", "major", 7, "6:7 8 10 5:7 8 10 4:7 9 10 3:7 9 10 2:8 10 1:7 8 10")]
    public void Lay_gives_box_near_5_of_other_scales(
        string root,
        string scale,
        int number,
        string expected
    ) => Assert.Equal(expected, Lay(new Layout.Box(number, 5), Notes(root, scale)));

    [Fact]
    public void Lay_takes_a_lost_note_above_the_window_when_below_it_is_the_nut() =>
        // The strings lie a fourth apart but for one third, so one note is lost between each pair of the others.
        Assert.Equal(
            "6:0 1 2 3 4 5:0 1 2 3 4 4:0 1 2 3 4 3:0 1 2 3 2:0 1 2 3 4 1:0 1 2 3",
            Lay(new Layout.Box(1, 0), Notes("E", "chromatic"))
        );

    [Fact]
    public void Lay_bridges_the_wide_hole_of_a_dropped_string_from_the_nearer_side() =>
        // Drop D: the strings 6 and 5 lie seven semitones apart; D is two frets below the window of string 5 and
        // two above that of string 6.
        Assert.Equal(
            "6:7 9 10 5:5 7 8 10 4:7 9 10 3:7 9 10 2:8 10 1:7 8 10",
            Lay(new Layout.Box(1, 5), Notes("A", "natural minor"), Tuned("drop D"))
        );

    [Theory]
    [InlineData("half step down", "G#", "6:5 8 5:5 7 4:5 7 3:5 7 2:5 8 1:5 8")]
    [InlineData("whole step down", "G", "6:5 8 5:5 7 4:5 7 3:5 7 2:5 8 1:5 8")]
    [InlineData("drop D", "A", "6:7 10 5:5 7 4:5 7 3:5 7 2:5 8 1:5 8")]
    [InlineData("drop C", "G", "6:7 10 5:5 7 4:5 7 3:5 7 2:5 8 1:5 8")]
    [InlineData("double drop D", "A", "6:7 10 5:5 7 4:5 7 3:5 7 2:5 8 1:7 10")]
    [InlineData("DADGAD", "A", "6:7 10 5:5 7 4:5 7 3:5 7 2:7 10 1:7 10")]
    [InlineData("open G", "A", "6:7 10 5:7 9 4:5 7 3:5 7 2:5 8 1:7 10")]
    [InlineData("open D", "A", "6:7 10 5:5 7 4:5 7 3:6 8 2:7 10 1:7 10")]
    [InlineData("open E", "A", "6:5 8 5:3 5 4:3 5 3:4 6 2:5 8 1:5 8")]
    [InlineData("all fourths", "A", "6:5 8 5:5 7 4:5 7 3:5 7 2:4 7 1:4 7")]
    [InlineData("seven-string", "A", "7:5 8 6:5 8 5:5 7 4:5 7 3:5 7 2:5 8 1:5 8")]
    [InlineData("eight-string", "A", "8:6 8 7:5 8 6:5 8 5:5 7 4:5 7 3:5 7 2:5 8 1:5 8")]
    [InlineData("bass", "A", "4:5 8 3:5 7 2:5 7 1:5 7")]
    [InlineData("five-string bass", "E", "5:5 8 4:5 7 3:5 7 2:5 7 1:4 7")]
    [InlineData("G4 C4 E4 A4", "A", "4:2 5 3:2 4 2:3 5 1:3 5")]
    public void Lay_gives_box_1_under_each_tuning(string tuning, string root, string expected) =>
        Assert.Equal(expected, Lay(new Layout.Box(1, 5), Notes(root, "minor pentatonic"), Tuned(tuning)));

    [Fact]
    public void Lay_orders_a_seven_note_box_of_a_reentrant_tuning_by_pitch() =>
        Assert.Equal(
            "3:2 4 5 2:3 4:2 4 5 1:5",
            Lay(new Layout.Box(1, 5), Notes("A", "natural minor"), Tuned("G4 C4 E4 A4"))
        );

    [Theory]
    [InlineData("C#", 2, "6:12 14 5:11 14 4:11 14 3:11 13 2:12 14 1:12 14")]
    [InlineData("B", 3, "6:12 14 5:12 14 4:12 14 3:11 14 2:12 15 1:12 14")]
    public void Lay_passes_over_a_place_with_notes_below_the_nut(string root, int number, string expected) =>
        // Both boxes begin on E; at the open string 6 another string would need fret −1.
        Assert.Equal(expected, Lay(new Layout.Box(number, 1), Notes(root, "minor pentatonic")));

    [Fact]
    public void Lay_passes_over_a_place_below_the_nut_on_a_reentrant_tuning_too() =>
        // At the open string 4 the next note, B, would lie one fret below the nut of string 3.
        Assert.Equal(
            "4:12 14 3:11 14 2:12 15 1:12 14",
            Lay(new Layout.Box(2, 1), Notes("E", "minor pentatonic"), Tuned("G4 C4 E4 A4"))
        );

    [Fact]
    public void Lay_gives_a_tie_to_the_lower_place() =>
        // A lies at frets 5 and 17 of string 6; 11 is six frets from both.
        Assert.StartsWith(
            "6:5 8",
            Lay(new Layout.Box(1, 11), Notes("A", "minor pentatonic")),
            StringComparison.Ordinal
        );

    [Fact]
    public void Lay_reads_the_root_as_if_the_capo_were_the_nut() =>
        Assert.Equal(
            "6:5 8 5:5 7 4:5 7 3:5 7 2:5 8 1:5 8",
            Lay(new Layout.Box(1, 5), Notes("A", "minor pentatonic"), Tuned("standard", capo: 3))
        );

    [Theory]
    [InlineData(false, "6:5 5:5 4:5 3:5 2:5 1:5")]
    [InlineData(true, "6:8 5:7 4:7 3:7 2:8 1:8")]
    public void Lay_takes_one_side_of_a_box(bool high, string expected) =>
        Assert.Equal(expected, Lay(new Layout.OneSide(high, 1, 5), Notes("A", "minor pentatonic")));

    [Theory]
    [InlineData(1, 2, 5, "6:5 8 10 5:5 7 10 4:5 7 10 3:5 7 9 2:5 8 10 1:5 8 10")]
    [InlineData(2, 3, 8, "6:8 10 12 5:7 10 12 4:7 10 12 3:7 9 12 2:8 10 13 1:8 10 12")]
    [InlineData(3, 4, 10, "6:10 12 15 5:10 12 15 4:10 12 14 3:9 12 14 2:10 13 15 1:10 12 15")]
    [InlineData(4, 5, 12, "6:12 15 17 5:12 15 17 4:12 14 17 3:12 14 17 2:13 15 17 1:12 15 17")]
    [InlineData(5, 1, 15, "6:15 17 20 5:15 17 19 4:14 17 19 3:14 17 19 2:15 17 20 1:15 17 20")]
    public void Lay_joins_neighbouring_boxes(int first, int second, int near, string expected) =>
        Assert.Equal(expected, Lay(new Layout.Joined(first, second, near), Notes("A", "minor pentatonic")));

    [Fact]
    public void Lay_chains_boxes_up_the_neck_on_two_strings() =>
        Assert.Equal(
            "2:5 8 1:5 8 2:8 10 1:8 10 2:10 13 1:10 12 2:13 15 1:12 15 2:15 17 1:15 17",
            Lay(new Layout.Chain([2, 1], [1, 2, 3, 4, 5], 5), Notes("A", "minor pentatonic"))
        );

    [Fact]
    public void Lay_finds_the_same_box_again_an_octave_up_the_neck() =>
        Assert.Equal(
            "2:5 8 1:5 8 2:17 20 1:17 20",
            Lay(new Layout.Chain([2, 1], [1, 1], 5), Notes("A", "minor pentatonic"))
        );

    [Fact]
    public void Lay_takes_a_pair_of_strings_out_of_a_box() =>
        Assert.Equal(
            "4:5 7 1:5 8",
            Lay(new Layout.StringPair([4, 1], [1], 5), Notes("A", "minor pentatonic"))
        );
}
