namespace Passagework.Tests.Notation;

/// <summary>Signs on one string and what they mean (common practice of plain-text tab).</summary>
public sealed class TextTabSignTests
{
    private const string NoRhythm = "line 1, column 3: no rhythm is written, every note lasts 1/8";

    [Theory]
    [InlineData("12-15", "1:12 1:15")]
    [InlineData("0-24", "1:0 1:24")]
    [InlineData("5–8—7_3", "1:5 1:8 1:7 1:3")]
    public void Frets_are_read_as_numbers(string signs, string places)
    {
        var import = TabTexts.Read(TabTexts.TopString(signs));

        Assert.Equal(places, TabTexts.Places(import));
        Assert.Single(import.Warnings);
    }

    [Theory]
    [InlineData("1215", "1:12 1:15", "1215 is read as 12, 15")]
    [InlineData("112", "1:11 1:2", "112 is read as 11, 2")]
    [InlineData("325", "1:3 1:2 1:5", "325 is read as 3, 2, 5")]
    [InlineData("57", "1:5 1:7", "57 is read as 5, 7")]
    [InlineData("05", "1:0 1:5", "05 is read as 0, 5")]
    public void Digits_that_touch_are_one_fret_up_to_24_and_warned_of(
        string signs,
        string places,
        string warning
    )
    {
        var import = TabTexts.Read(TabTexts.TopString(signs));

        Assert.Equal(places, TabTexts.Places(import));
        Assert.Contains(
            $"line 1, column 4: ambiguous: {warning}",
            TabTexts.Warnings(import),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData("5h8p5", "1:5 1:8 1:5", "None Hammer Pull")]
    [InlineData("5H8P5", "1:5 1:8 1:5", "None Hammer Pull")]
    [InlineData("5^8^5", "1:5 1:8 1:5", "None Hammer Pull")]
    [InlineData("5/7\\5", "1:5 1:7 1:5", "None Slide Slide")]
    [InlineData("5\\\\3", "1:5 1:3", "None Slide")]
    [InlineData("5s7", "1:5 1:7", "None Slide")]
    [InlineData("5h--8", "1:5 1:8", "None Hammer")]
    public void Slurs_lead_to_the_next_note(string signs, string places, string slurs)
    {
        var import = TabTexts.Read(TabTexts.TopString(signs));

        Assert.Equal(places, TabTexts.Places(import));
        Assert.Equal(slurs, TabTexts.Slurs(import));
        Assert.Equal("", TabTexts.Kept(import));
        Assert.Equal(NoRhythm, TabTexts.Warnings(import));
    }

    [Theory]
    [InlineData("7b9r7", "1:7", "Bend '2 half-steps' 1:5 0\nRelease 'release' 1:7 0")]
    [InlineData("7b1/2", "1:7", "Bend '1/2 of a whole step' 1:5 0")]
    [InlineData("/7", "1:7", "SlideIn '/' 1:5 0")]
    [InlineData("7\\", "1:7", "SlideOut '\\' 1:5 0")]
    [InlineData("7~~-5", "1:7 1:5", "Vibrato 'vibrato' 1:5 0")]
    [InlineData("7-t12", "1:7 1:12", "Tap '' 1:6 1")]
    [InlineData("tr5", "1:5", "Trill '' 1:4 0")]
    [InlineData("<12>-[7]", "1:12 1:7", "NaturalHarmonic '<12>' 1:4 0\nArtificialHarmonic '[7]' 1:9 1")]
    [InlineData("5-(5)", "1:5 1:5", "Ghost 'in brackets' 1:7 1")]
    [InlineData("5-x-7", "1:5 r 1:7", "Dead 'x' 1:6 ")]
    public void Signs_that_a_line_cannot_carry_are_kept_with_their_place(
        string signs,
        string places,
        string kept
    )
    {
        var import = TabTexts.Read(TabTexts.TopString(signs));

        Assert.Equal(places, TabTexts.Places(import));
        Assert.Equal(kept, TabTexts.Kept(import));
    }

    [Fact]
    public void A_bend_of_unknown_size_is_taken_as_two_half_steps_and_warned_of()
    {
        var import = TabTexts.Read(TabTexts.TopString("7b"));

        Assert.Equal("1:7", TabTexts.Places(import));
        Assert.Equal("Bend '2 half-steps' 1:5 0", TabTexts.Kept(import));
        Assert.StartsWith("line 1, column 3: no rhythm", TabTexts.Warnings(import), StringComparison.Ordinal);
        Assert.EndsWith(
            "line 1, column 5: a bend of unknown size, 2 half-steps are taken",
            TabTexts.Warnings(import),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void An_unknown_sign_is_kept_and_warned_of()
    {
        var import = TabTexts.Read(TabTexts.TopString("5-$-7"));

        Assert.Equal("1:5 1:7", TabTexts.Places(import));
        Assert.Equal("Unknown '$' 1:6 ", TabTexts.Kept(import));
        Assert.Contains(
            "line 1, column 6: unknown sign '$', kept aside",
            TabTexts.Warnings(import),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_sign_of_two_places_is_kept_whole() =>
        Assert.Equal("Unknown '🎸' 1:6 ", TabTexts.Kept(TabTexts.Read(TabTexts.TopString("5-🎸-7--5"))));

    [Fact]
    public void Notes_at_once_are_a_chord_also_beside_two_digits()
    {
        var import = TabTexts.Read(
            "e|-5----8-|\nB|-7---10-|\nG|-------x|\nD|--------|\nA|--------|\nE|--------|"
        );

        Assert.Equal("1:5+2:7 1:8+2:10", TabTexts.Places(import)[..16]);
    }

    [Fact]
    public void A_tone_that_no_hand_holds_is_left_out_and_said()
    {
        var import = TabTexts.Read(TabTexts.Strings("-12--", "-2---"));

        Assert.Equal("1:12", TabTexts.Places(import));
        Assert.Contains(
            "line 1, column 4: 2:2 left out: no hand holds it with the notes above it",
            TabTexts.Warnings(import),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Dead_strokes_on_all_strings_are_one_rest()
    {
        var lines = "eBGDAE".Select(label => $"{label}|-{(label == 'e' ? '5' : '-')}-x-|");

        var import = TabTexts.Read(string.Join('\n', lines));

        Assert.Equal("1:5 r", TabTexts.Places(import));
        Assert.Equal("Dead 'x' 1:6 ", TabTexts.Kept(import));
    }

    [Fact]
    public void A_note_in_brackets_behind_a_bar_line_holds_on_the_same_note()
    {
        var import = TabTexts.Read(
            """
            Rhythm  q h.   w
                 e|-5-7--|(7)|
                 B|------|---|
                 G|------|---|
                 D|------|---|
                 A|------|---|
                 E|------|---|
            """
        );

        Assert.Equal("1:5 1:7", TabTexts.Places(import));
        Assert.Equal("1/4 7/4", TabTexts.Lengths(import));
    }
}
