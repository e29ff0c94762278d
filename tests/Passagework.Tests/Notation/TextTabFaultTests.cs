using System.Diagnostics;
using Passagework.Notation;

namespace Passagework.Tests.Notation;

public sealed class TextTabFaultTests
{
    private const string Strings = "|---|\n|---|\n|---|\n|---|\n|---|\n";

    [Theory]
    [InlineData("", "no tab found; 4 to 8 lines of strings, one under the other")]
    [InlineData("hello\nthere", "no tab found; 4 to 8 lines of strings, one under the other")]
    [InlineData(
        "|-5-|\n|---|\n|---|",
        "line 1, column 1: fewer than 4 lines of tab in a row; 4 to 8 strings"
    )]
    [InlineData("|---|\n|---|\n|---|\n|---|", "line 1, column 2: no notes in the tab; frets on the strings")]
    [InlineData(
        "|-5-|-7-|\n|---|---|\n|--|----|\n|---|---|",
        "line 3, column 4: bars of unequal width: a bar line that stands in another column than on the other strings; bar lines under one another on all strings"
    )]
    [InlineData(
        "|-5-|-7-|\n|---|---|\n|---5---|\n|---|---|",
        "line 3, column 5: bars of unequal width: a bar line that stands in another column than on the other strings; bar lines under one another on all strings"
    )]
    [InlineData("|-5\u0007-|\n", "line 1, column 4: unreadable character U+0007; plain text in UTF-8")]
    [InlineData("ok\n|-\uFFFD-|\n", "line 2, column 3: unreadable character U+FFFD; plain text in UTF-8")]
    [InlineData("Tempo: 0\n", "line 1, column 8: a tempo of 0; above 0, at most 1000")]
    [InlineData("Capo: 13\n", "line 1, column 7: a capo at fret 13; 0 to 12")]
    [InlineData("Meter: 4/5\n", "line 1, column 8: unknown meter '4/5'; such as 4/4, 6/8")]
    [InlineData(
        "Tuning: E A D\n",
        "line 1, column 9: a tuning of 3 strings; 4 to 8 notes, lowest string first"
    )]
    [InlineData(
        "Tuning: E A D G B E A D G\n",
        "line 1, column 9: a tuning of 9 strings; 4 to 8 notes, lowest string first"
    )]
    [InlineData("Swing: 4/5\n", "line 1, column 8: a swing of 4/5; a fraction from 1/2 (straight) to 3/4")]
    [InlineData("Frets: 99\n", "line 1, column 8: a neck of 99 frets; 12 to 36")]
    [InlineData(
        "Start: soon\n",
        "line 1, column 8: a start of 'soon'; a fraction of a whole note, such as 1/16"
    )]
    [InlineData("Frets: 22\n\n|24-|\n" + Strings, "line 3, column 2: fret 24 is beyond the neck; 0 to 22")]
    public void Bad_tab_is_refused_with_place_and_remedy(string text, string fault) =>
        Assert.Equal(fault, TabTexts.FaultOf(text));

    // Attributes can't carry half a character.
    [Fact]
    public void Half_a_character_is_refused()
    {
        Assert.Equal(
            "line 1, column 2: unreadable character U+D83C; plain text in UTF-8",
            TabTexts.FaultOf("a" + (char)0xD83C + "\n")
        );
        Assert.Equal(
            "line 1, column 1: unreadable character U+DFB8; plain text in UTF-8",
            TabTexts.FaultOf((char)0xDFB8 + "a\n")
        );
    }

    [Fact]
    public void Nine_strings_are_refused() =>
        Assert.Equal(
            "line 1, column 1: 9 lines of tab in a row; systems of 4 to 8 strings",
            TabTexts.FaultOf(string.Concat(Enumerable.Repeat("|-5-|\n", 9)))
        );

    [Fact]
    public void Systems_of_different_string_counts_are_refused() =>
        Assert.Equal(
            "line 8, column 1: a system of 4 strings; 6 strings as in the first system",
            TabTexts.FaultOf("|-5-|\n" + Strings + "\n|-5-|\n|---|\n|---|\n|---|\n")
        );

    [Fact]
    public void A_bar_that_does_not_last_what_the_meter_says_is_refused()
    {
        const string text = "Meter: 3/4\n\n  q q q   q q     q q q\n|-5-7-8-|-5-7---|-5-5-5-|\n";
        var rest = string.Concat(Enumerable.Repeat("|-------|-------|-------|\n", 5));

        Assert.Equal("line 4, column 10: bar 2 lasts 1/2; 3/4 in 3/4", TabTexts.FaultOf(text + rest));
    }

    [Fact]
    public void Repeats_without_end_are_refused()
    {
        var bars = string.Concat(Enumerable.Repeat("5-5-5-5-", 400));
        var text = string.Concat(
            Enumerable.Repeat(
                $"|{bars}|x99\n" + string.Concat(Enumerable.Repeat($"|{new string('-', 3200)}|\n", 5)) + "\n",
                3
            )
        );

        Assert.Equal("line 8, column 2: repeats make too many notes; at most 200000", TabTexts.FaultOf(text));
    }

    [Fact]
    public void More_than_a_megabyte_is_refused_at_once() =>
        Assert.Equal(
            "the text is larger than 1 MB; tab of at most 1,048,576 characters",
            TabTexts.FaultOf(new string('-', TextTab.MostCharacters + 1))
        );

    // Inputs of nearly a megabyte that would show quadratic work: the limit leaves room for a slow, busy machine.
    [Theory]
    [InlineData("5")]
    [InlineData("-5h7")]
    [InlineData("|")]
    [InlineData("|-")]
    [InlineData("$")]
    [InlineData("x")]
    [InlineData("(")]
    [InlineData("\t")]
    [InlineData("5 ")]
    [InlineData("\n-5-")]
    public void Large_inputs_take_linear_time(string piece)
    {
        const int Count = 6;
        var line =
            "|-"
            + string.Concat(Enumerable.Repeat(piece, (TextTab.MostCharacters / Count / piece.Length) - 8));
        var text = string.Concat(Enumerable.Repeat(line + "\n", Count));
        var begun = Stopwatch.GetTimestamp();

        _ = TextTab.Read(text);

        Assert.InRange(Stopwatch.GetElapsedTime(begun).TotalSeconds, 0, 20);
    }

    [Fact]
    public void Warnings_and_kept_signs_are_bounded()
    {
        var import = TabTexts.Read(TabTexts.TopString("5" + string.Concat(Enumerable.Repeat("--$", 5000))));

        Assert.Equal(101, import.Warnings.Length);
        Assert.Equal("and 4901 more warnings", import.Warnings[^1].Text);
        Assert.Equal(1000, import.Kept.Length);
    }

    // Found by the fuzz command: six strings of fillers only.
    [Fact]
    public void Strings_without_columns_are_refused() =>
        Assert.Equal(
            "line 1, column 1: no notes in the tab; frets on the strings",
            TabTexts.FaultOf(string.Concat(Enumerable.Repeat("________\n", 6)))
        );
}
