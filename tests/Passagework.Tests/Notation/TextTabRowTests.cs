using Passagework.Exercises;
using Passagework.Notation;

namespace Passagework.Tests.Notation;

public sealed class TextTabRowTests
{
    private const string FourNotes = """
        e|-5-7-8-5-|
        B|---------|
        G|---------|
        D|---------|
        A|---------|
        E|---------|
        """;

    [Theory]
    [InlineData("   q e e h", "1/4 1/8 1/8 1/2")]
    [InlineData("   q.s s h", "3/8 1/16 1/16 1/2")]
    [InlineData("   E E Q H", "1/8 1/8 1/4 1/2")]
    public void A_row_of_letters_gives_the_lengths(string row, string lengths) =>
        Assert.Equal(lengths, TabTexts.Lengths(TabTexts.Read(row + "\n" + FourNotes)));

    [Fact]
    public void Rests_stand_in_the_row_of_lengths() =>
        Assert.Equal(
            "1/4 r1/8 1/8 1/4 1/4",
            TabTexts.Lengths(
                TabTexts.Read(
                    "   q ree q q\n"
                        + FourNotes.Replace("5-7-8-5-", "5---7-8-5-").Replace("|---------|", "|-----------|")
                )
            )
        );

    [Theory]
    [InlineData("   1 & 2 4", "1/8 1/8 1/2 1/4")]
    [InlineData("   1 e & a", "1/16 1/16 1/16 13/16")]
    [InlineData("   2 3 & 4", "r1/4 1/4 1/8 1/8 1/4")]
    [InlineData("   1 2 3 4", "1/4 1/4 1/4 1/4")]
    public void A_row_of_counts_gives_the_lengths(string row, string lengths) =>
        Assert.Equal(lengths, TabTexts.Lengths(TabTexts.Read(row + "\n" + FourNotes)));

    [Theory]
    [InlineData("   1 1 2 3")]
    [InlineData("   2 1 3 4")]
    [InlineData("   1 2   3")]
    public void Counts_that_do_not_rise_or_leave_a_note_out_give_no_lengths(string row) =>
        Assert.Equal("1/8 1/8 1/8 1/8", TabTexts.Lengths(TabTexts.Read(row + "\n" + FourNotes)));

    [Theory]
    [InlineData("  q e e h")]
    [InlineData("   q e e")]
    public void Lengths_that_do_not_stand_over_every_note_are_ignored_with_a_warning(string row)
    {
        var import = TabTexts.Read(row + "\n" + FourNotes);

        Assert.Equal("1/8 1/8 1/8 1/8", TabTexts.Lengths(import));
        Assert.Contains("it is ignored", TabTexts.Warnings(import), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("   n v n v", "Down Up Down Up")]
    [InlineData("   d u d u", "Down Up Down Up")]
    [InlineData("   D U D U", "Down Up Down Up")]
    [InlineData("   p i m a", "Thumb Index Middle Ring")]
    public void A_row_of_strokes_is_read(string row, string strokes) =>
        Assert.Equal(strokes, Strokes(TabTexts.Read(row + "\n" + FourNotes)));

    [Theory]
    [InlineData(CaretStrokes.Unknown, "")]
    [InlineData(CaretStrokes.CaretIsUp, "Up Down Up Down")]
    [InlineData(CaretStrokes.CaretIsDown, "Down Up Down Up")]
    public void Carets_are_left_out_unless_a_setting_says_what_they_mean(CaretStrokes carets, string strokes)
    {
        var import = TabTexts.Read("   ^ v ^ v\n" + FourNotes, new TabReading { Carets = carets });

        Assert.Equal(strokes, Strokes(import));
        Assert.Equal(
            carets == CaretStrokes.Unknown,
            TabTexts.Warnings(import).Contains("uses ^ and v", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Fingers_stand_below_and_accents_above()
    {
        var import = TabTexts.Read("   >   >\n" + FourNotes + "\n   1 3 4 1");

        Assert.Equal([1, 3, 4, 1], import.Recipe.Fretting.Locks.Select(held => held.Finger ?? -1));
        Assert.Equal(
            [true, false, true, false],
            import.Recipe.Written!.Entries.Select(entry => entry.Accent)
        ); // written by import
    }

    [Theory]
    [InlineData("   PM------", "PM")]
    [InlineData("   P.M.----|", "P.M.")]
    [InlineData("   let ring-|", "let ring")]
    [InlineData("   . . . .", "staccato")]
    public void Rows_of_sound_are_kept(string row, string sound) =>
        Assert.Equal($"Sound '{sound}' 1:4 ", TabTexts.Kept(TabTexts.Read(row + "\n" + FourNotes)));

    [Fact]
    public void Finger_style_strokes_make_the_technique_fingers()
    {
        Assert.Equal(Technique.Fingers, TabTexts.Read("   p i m a\n" + FourNotes).Recipe.Picking.Technique);
        Assert.Equal(Technique.Hybrid, TabTexts.Read("   n m n a\n" + FourNotes).Recipe.Picking.Technique);
        Assert.Equal(FirstStroke.Up, TabTexts.Read("   v n v n\n" + FourNotes).Recipe.Picking.First);
    }

    [Theory]
    [InlineData("  q q q   q q q   q q q", "3/4")]
    [InlineData("  q q q.  q q q.  q q q.", "7/8")]
    [InlineData("  h q q   h q q   h q q", "4/4")]
    [InlineData("  q3q3q3  q3q3q3  q3q3q3", "2/4")]
    public void Bars_of_equal_length_show_the_meter(string row, string meter)
    {
        var text =
            row
            + "\n|-5-7-8-|-5-7-8-|-5-7-8-|\n"
            + string.Concat(Enumerable.Repeat("|-------|-------|-------|\n", 3));

        Assert.Equal(meter, TabTexts.Read(text).Recipe.Rhythm.Meter.ToString());
    }

    [Fact]
    public void A_short_first_bar_is_a_pick_up()
    {
        var import = TabTexts.Read("  q   h q q\n|-5-|-5-7-8-|\n|---|-------|\n|---|-------|\n|---|-------|");

        Assert.Equal("1/4 1/2 1/4 1/4", TabTexts.Lengths(import));
        Assert.Equal("3/4", import.Recipe.Rhythm.StartOffset.ToString());
    }

    private static string Strokes(TabImport import) =>
        string.Join(' ', import.Recipe.Fretting.Locks.Select(held => held.Stroke));
}
