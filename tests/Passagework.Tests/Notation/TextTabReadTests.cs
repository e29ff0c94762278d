using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Notation;

namespace Passagework.Tests.Notation;

public sealed class TextTabReadTests
{
    private const string Phrase = """
        e|-----------------|
        B|---------5-8-----|
        G|---5-7---------7-|
        D|-----------------|
        A|-----------------|
        E|-----------------|
        """;

    [Fact]
    public void Columns_are_counted_from_the_label_and_no_lengths_are_claimed()
    {
        var findings = new TabFindings();
        var piece = TabLines
            .Of(Phrase)
            .Then(lines => TabPage.Of(lines, findings))
            .Then(page => TabSystems.Read(page, new TabReading(), findings))
            .OrThrow();

        var read = piece.Bars.Single().Events.Select(note => (note.Spot.Column - 1, note.Place?.ToString()));

        Assert.Equal([(5, "3:5"), (7, "3:7"), (11, "2:5"), (13, "2:8"), (17, "3:7")], read);
        Assert.Equal(
            "line 1, column 3: no rhythm is written, every note lasts 1/8",
            TabTexts.Warnings(TabTexts.Read(Phrase))
        );
    }

    [Fact]
    public void Unwritten_lengths_are_a_setting()
    {
        var import = TabTexts.Read(Phrase, new TabReading { UnwrittenLength = Fraction.Of(1, 16) });

        Assert.Equal("1/16 1/16 1/16 1/16 1/16", TabTexts.Lengths(import));
    }

    [Fact]
    public void Bars_of_equal_width_only_suggest_a_length()
    {
        var import = TabTexts.Read(
            "|5-7-5-7-|7-5-7-5-|\n" + string.Concat(Enumerable.Repeat("|--------|--------|\n", 5))
        );

        Assert.Equal("1/8 1/8 1/8 1/8 1/8 1/8 1/8 1/8", TabTexts.Lengths(import));
        Assert.Equal(
            "line 1, column 2: no rhythm is written, every note lasts 1/8; all bars are 8 columns wide, so a column may stand for 1/8",
            TabTexts.Warnings(import)
        );
    }

    [Theory]
    [InlineData("e", "B", "G", "D", "A", "E", "1:3 6:5")]
    [InlineData("E", "B", "G", "D", "A", "E", "1:3 6:5")]
    [InlineData("E", "A", "D", "G", "B", "e", "6:3 1:5")]
    [InlineData("E2", "A2", "D3", "G3", "B3", "E4", "6:3 1:5")]
    [InlineData("E4", "B3", "G3", "D3", "A2", "E2", "1:3 6:5")]
    [InlineData("", "", "", "", "", "", "1:3 6:5")]
    [InlineData("eb", "Bb", "Gb", "Db", "Ab", "Eb", "1:3 6:5")]
    [InlineData("Eb", "Ab", "Db", "Gb", "Bb", "eb", "6:3 1:5")]
    public void Labels_tell_which_line_is_which_string(
        string a,
        string b,
        string c,
        string d,
        string e,
        string f,
        string places
    )
    {
        var text = $"{a}|-3---|\n{b}|-----|\n{c}|-----|\n{d}|-----|\n{e}|-----|\n{f}|---5-|";

        Assert.Equal(places, TabTexts.Places(TabTexts.Read(text)));
    }

    [Theory]
    [InlineData("Tuning: D A D G A D (low to high)", "DADGAD")]
    [InlineData("Tuning: DADGAD", "DADGAD")]
    [InlineData("Tuning: drop d", "drop D")]
    [InlineData("Tuning: e B G D A D", "drop D")]
    [InlineData("Tuning: D2 A2 D3 G3 B3 E4", "D2 A2 D3 G3 B3 E4")]
    [InlineData("Tuning: E A D G C F (low to high)", "all fourths")]
    [InlineData("Tuning: E B G D A E (high to low)", "standard")]
    [InlineData("Tuning: D F C G Bb E", "D2 F2 C3 G3 Bb3 E4")]
    public void The_tuning_line_names_the_tuning(string line, string tuning) =>
        Assert.Equal(tuning, TabTexts.Read(line + "\n\n" + Phrase).Recipe.Instrument.Tuning.Text);

    [Fact]
    public void Header_lines_are_read()
    {
        var recipe = TabTexts
            .Read(
                "Slow song\nby hand\nCapo: 2nd fret\nTime: 6/8\nTempo: quarter = 92.5\nSwing: 2/3\nNotes: A minor blues\n\n"
                    + Phrase
            )
            .Recipe;

        Assert.Equal("Slow song", recipe.Title);
        Assert.Equal(2, recipe.Instrument.Capo);
        Assert.Equal("6/8", recipe.Rhythm.Meter.ToString());
        Assert.Equal(92.5, recipe.Rhythm.TempoBpm);
        Assert.Equal(Fraction.Of(2, 3), recipe.Rhythm.Swing.Share);
        Assert.Equal("minor blues", recipe.Notes?.Scale);
    }

    [Fact]
    public void Text_beside_the_music_is_kept()
    {
        var import = TabTexts.Read("A title\n\nVerse\n" + Phrase + "\nslowly now\n");

        Assert.Equal("A title", import.Recipe.Title);
        Assert.Equal("Text 'Verse' 3:1 \nText 'slowly now' 10:1 ", TabTexts.Kept(import));
    }

    [Fact]
    public void Text_that_begins_like_a_label_is_no_string()
    {
        var import = TabTexts.Read("A: verse, by hand\n" + Phrase);

        Assert.Equal("A: verse, by hand", import.Recipe.Title);
        Assert.Equal(6, import.Recipe.Instrument.Tuning.StringCount);
    }

    [Fact]
    public void A_remark_behind_the_last_bar_line_is_kept()
    {
        var import = TabTexts.Read("|-5-|  slowly\n|---|\n|---|\n|---|");

        Assert.Equal("1:5", TabTexts.Places(import));
        Assert.Equal("Text 'slowly' 1:6 ", TabTexts.Kept(import));
    }

    [Fact]
    public void A_short_line_is_filled_up_with_a_warning()
    {
        var import = TabTexts.Read("|-5-7-|\n|-----|\n|---\n|-----|\n|-----|\n|-----|");

        Assert.Equal("1:5 1:7", TabTexts.Places(import));
        Assert.Contains(
            "line 3, column 5: the line is 3 columns short, filled up",
            TabTexts.Warnings(import),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_bar_line_on_some_strings_counts_for_all()
    {
        var import = TabTexts.Read("|-5-|-7-|\n|---|---|\n|-------|\n|-------|\n|-------|\n|-------|");

        Assert.Equal("1:5 1:7", TabTexts.Places(import));
        Assert.Contains(
            "line 1, column 5: a bar line that only some strings have",
            TabTexts.Warnings(import),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("|-5-|\n|---|\n|---|\n|---|x4", "4:5 4:5 4:5 4:5")]
    [InlineData("|-5-|\n|---|\n|---|\n|---|  (2x)", "4:5 4:5")]
    [InlineData("|-5-|\n|---|\n|---|\n|---|\nx3", "4:5 4:5 4:5")]
    [InlineData("|-5-||:-7-:|-8-|\n|---||:---:|---|\n|---||:---:|---|\n|---||:---:|---|", "4:5 4:7 4:7 4:8")]
    [InlineData("|-5-||----||-8-|\n|---||*-7*||---|\n|---||*--*||---|\n|---||----||---|", "4:5 3:7 3:7 4:8")]
    [InlineData("|-5-:|-7-:|\n|---:|---:|\n|---:|---:|\n|---:|---:|", "4:5 4:5 4:7 4:7")]
    [InlineData("|:-7-:|\n|:---:|\n|:---:|\n|:---:|", "4:7 4:7")]
    public void Repeats_are_written_out(string text, string places)
    {
        var import = TabTexts.Read("Tuning: G D A E (high to low)\n\n" + text);

        Assert.Equal(places.Replace("4:", "1:").Replace("3:", "2:"), TabTexts.Places(import));
        Assert.Contains("repeated bars are written out", TabTexts.Warnings(import), StringComparison.Ordinal);
    }

    [Fact]
    public void Systems_that_end_without_a_bar_line_go_on()
    {
        const string top = "e|-5-7-\nB|-----\nG|-----\nD|-----\nA|-----\nE|-----\n";
        const string next = "8-9-|\n----|\n----|\n----|\n----|\n----|\n";

        Assert.Equal("1:5 1:7 1:8 1:9", TabTexts.Places(TabTexts.Read(top + "\n" + next)));
    }

    [Fact]
    public void Lines_that_were_wrapped_one_by_one_are_put_together()
    {
        var lines = "eBGDAE".Select(label =>
            $"{label}|-{(label == 'G' ? '5' : '-')}---\n{(label == 'G' ? '7' : '-')}-|"
        );

        Assert.Equal("3:5 3:7", TabTexts.Places(TabTexts.Read(string.Join('\n', lines))));
    }

    [Fact]
    public void Systems_directly_under_one_another_are_told_apart()
    {
        Assert.Equal(
            "3:5 3:7 2:5 2:8 3:7 3:5 3:7 2:5 2:8 3:7",
            TabTexts.Places(TabTexts.Read(Phrase + "\n" + Phrase))
        );
    }

    [Fact]
    public void A_tab_of_strings_without_bars_and_labels_is_read()
    {
        var import = TabTexts.Read("--5--\n-----\n---7-\n-----");

        Assert.Equal("1:5 3:7", TabTexts.Places(import));
        Assert.Equal("bass", import.Recipe.Instrument.Tuning.Text);
    }
}
