using Passagework.Instrument;
using static Passagework.Tests.Instrument.Necks;

namespace Passagework.Tests.Instrument;

/// <summary>Layouts that go string by string. Fret tables are common practice, computed for the project.</summary>
public class StringLayoutTests
{
    private static readonly Fretboard LongNeck = Tuned("standard", frets: 27);

    [Theory]
    [InlineData("6:0", "6:0 3 5 5:3 5 7 4:5 7 10 3:7 9 12 2:10 13 15 1:12 15 17")]
    [InlineData("6:3", "6:3 5 8 5:5 7 10 4:7 10 12 3:9 12 14 2:13 15 17 1:15 17 20")]
    [InlineData("6:5", "6:5 8 10 5:7 10 12 4:10 12 14 3:12 14 17 2:15 17 20 1:17 20 22")]
    [InlineData("6:8", "6:8 10 12 5:10 12 15 4:12 14 17 3:14 17 19 2:17 20 22 1:20 22 24")]
    [InlineData("6:10", "6:10 12 15 5:12 15 17 4:14 17 19 3:17 19 21 2:20 22 25 1:22 24 27")]
    public void Lay_climbs_three_notes_to_a_string_in_A_minor_pentatonic(string from, string expected) =>
        Assert.Equal(
            expected,
            Lay(new Layout.PerString(3, At(from)), Notes("A", "minor pentatonic"), LongNeck)
        );

    [Theory]
    [InlineData("6:5", "6:5 7 8 5:5 7 8 4:5 7 9 3:5 7 9 2:6 8 10 1:7 8 10")]
    [InlineData("6:7", "6:7 8 10 5:7 8 10 4:7 9 10 3:7 9 10 2:8 10 12 1:8 10 12")]
    [InlineData("6:8", "6:8 10 12 5:8 10 12 4:9 10 12 3:9 10 12 2:10 12 13 1:10 12 13")]
    [InlineData("6:10", "6:10 12 13 5:10 12 14 4:10 12 14 3:10 12 14 2:12 13 15 1:12 13 15")]
    [InlineData("6:12", "6:12 13 15 5:12 14 15 4:12 14 15 3:12 14 16 2:13 15 17 1:13 15 17")]
    [InlineData("6:1", "6:1 3 5 5:2 3 5 4:2 3 5 3:2 4 5 2:3 5 6 1:3 5 7")]
    [InlineData("6:3", "6:3 5 7 5:3 5 7 4:3 5 7 3:4 5 7 2:5 6 8 1:5 7 8")]
    public void Lay_climbs_three_notes_to_a_string_in_A_natural_minor(string from, string expected) =>
        Assert.Equal(expected, Lay(new Layout.PerString(3, At(from)), Notes("A", "natural minor")));

    [Fact]
    public void Lay_leaves_strings_below_the_first_note_unused() =>
        Assert.Equal(
            "3:5 7 2:5 8 1:5 8",
            Lay(new Layout.PerString(2, At("3:5")), Notes("A", "minor pentatonic"))
        );

    [Theory]
    [InlineData(2, 3, "6:3", "6:3 5 5:3 5 7 4:5 7 3:5 7 9 2:8 10 1:8 10 12")]
    [InlineData(3, 2, "6:0", "6:0 3 5 5:3 5 4:2 5 7 3:5 7 2:5 8 10 1:8 10")]
    [InlineData(3, 2, "6:3", "6:3 5 8 5:5 7 4:5 7 10 3:7 9 2:8 10 13 1:10 12")]
    [InlineData(3, 2, "6:5", "6:5 8 10 5:7 10 4:7 10 12 3:9 12 2:10 13 15 1:12 15")]
    public void Lay_climbs_diagonally(int first, int second, string from, string expected) =>
        Assert.Equal(
            expected,
            Lay(new Layout.Diagonal([first, second], At(from)), Notes("A", "minor pentatonic"))
        );

    [Theory]
    [InlineData(6, "6:0 3 5 8 10 12 15 17 20 22 24")]
    [InlineData(5, "5:0 3 5 7 10 12 15 17 19 22 24")]
    [InlineData(4, "4:0 2 5 7 10 12 14 17 19 22 24")]
    [InlineData(3, "3:0 2 5 7 9 12 14 17 19 21 24")]
    [InlineData(2, "2:1 3 5 8 10 13 15 17 20 22")]
    [InlineData(1, "1:0 3 5 8 10 12 15 17 20 22 24")]
    public void Lay_runs_along_one_string(int number, string expected) =>
        Assert.Equal(
            expected,
            Lay(new Layout.OneString(number, 0, 24), Notes("A", "minor pentatonic"), LongNeck)
        );

    [Theory]
    [InlineData("standard", "C", "major", "6:0 1 3 5:0 2 3 4:0 2 3 3:0 2 2:0 1 3 1:0 1 3")]
    [InlineData("standard", "E", "major", "6:0 2 4 5:0 2 4 4:1 2 4 3:1 2 2:0 2 4 1:0 2 4")]
    [InlineData("DADGAD", "D", "major", "6:0 2 4 5:0 2 4 4:0 2 4 3:0 2:0 2 4 1:0 2 4")]
    [InlineData("G4 C4 E4 A4", "C", "major", "3:0 2 2:0 1 3 1:0 2 3")]
    public void Lay_finds_open_position(string tuning, string root, string scale, string expected) =>
        Assert.Equal(expected, Lay(new Layout.OpenPosition(), Notes(root, scale), Tuned(tuning)));

    [Fact]
    public void Lay_gives_places_as_they_are_written() =>
        Assert.Equal(
            "5:0 3:2 2:1 1:0 6:11",
            Lay(
                new Layout.Given([At("5:0"), At("3:2"), At("2:1"), At("1:0"), At("6:11")]),
                Notes("A", "minor triad")
            )
        );

    [Fact]
    public void Lay_finds_open_position_above_a_capo() =>
        Assert.Equal(
            "6:0 1 3 5:0 2 3 4:0 2 3 3:0 2 2:0 1 3 1:0 1 3",
            Lay(new Layout.OpenPosition(), Notes("C", "major"), Tuned("standard", capo: 5))
        );
}
