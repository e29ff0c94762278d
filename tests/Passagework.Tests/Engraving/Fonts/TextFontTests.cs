using CsCheck;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Tests.Engraving.Fonts;

public sealed class TextFontTests
{
    public static TheoryData<Face> Faces => [.. Enum.GetValues<Face>()];

    [Theory]
    [InlineData("Straße, œuvre, façade – “§ 5” … ½")]
    [InlineData("Příliš žluťoučký kůň; Łódź; Ştefan; kāpēc")]
    [InlineData("Ελληνικά με τόνους")]
    [InlineData("Быстрая гамма, ёжик, Ґанок")]
    [InlineData("Tiếng Việt: những ngón tay")]
    [InlineData("B♭ major, F♯, G♮")]
    public void Missing_is_nothing_for_the_scripts_of_the_faces(string text) =>
        Assert.All(Enum.GetValues<Face>(), face => Assert.Null(TextFont.Missing(text, face)));

    [Theory]
    [InlineData("中文", "中 (U+4E2D), 文 (U+6587)")]
    [InlineData("שלום", "ש (U+05E9), ל (U+05DC), ו (U+05D5), ם (U+05DD)")]
    [InlineData("one\ntwo", "U+000A")]
    [InlineData(
        "中中文字入門用音",
        "中 (U+4E2D), 文 (U+6587), 字 (U+5B57), 入 (U+5165), 門 (U+9580) and 2 more"
    )]
    public void Missing_names_the_letters_that_no_font_has(string text, string named)
    {
        var fault = TextFont.Missing(text, Face.Sans);

        Assert.Equal($"the page's typeface has no {named}", fault?.What);
    }

    [Theory]
    [InlineData("caf\u00E9", "cafe\u0301")]
    [InlineData("Vi\u1EC7t", "Vie\u0323\u0302t")]
    [InlineData("\u0439\u0451", "\u0438\u0306\u0435\u0308")]
    public void A_letter_and_its_sign_are_drawn_as_the_letter_that_is_both(string joined, string apart)
    {
        Assert.Equal(TextFont.Width(joined, Face.Serif, 10), TextFont.Width(apart, Face.Serif, 10), 1e-9);
        Assert.Equal(TextFont.InkBox(joined, Face.Serif, 10), TextFont.InkBox(apart, Face.Serif, 10));
    }

    [Theory]
    [InlineData(Face.Sans)]
    [InlineData(Face.SansItalic)]
    [InlineData(Face.SansMedium)]
    [InlineData(Face.SansBold)]
    [InlineData(Face.SmallCaps)]
    public void Figures_of_the_sans_faces_are_equally_wide_and_stand_on_the_line(Face face)
    {
        var figures = Enumerable.Range(0, 10).Select(digit => $"{digit}").ToList();
        var heights = figures.ConvertAll(figure => TextFont.InkBox(figure, face, 1000));

        // In the italic the font itself lets them differ, by 8 thousandths of the em at most.
        var widths = figures.ConvertAll(figure => TextFont.Width(figure, face, 1000));
        Assert.InRange(widths.Max() - widths.Min(), 0, face == Face.SansItalic ? 8 : 0);
        // Lining figures reach about equally high and none hangs below the line by more than its round overshoot.
        Assert.All(heights, box => Assert.InRange(box.Bottom, -1, 15));
        Assert.InRange(heights.Max(box => -box.Top) - heights.Min(box => -box.Top), 0, 25);
    }

    [Fact]
    public void Figures_of_the_serif_are_old_style()
    {
        Assert.True(TextFont.InkBox("9", Face.Serif, 1000).Bottom > 100);
        Assert.NotEqual(TextFont.Width("1", Face.Serif, 10), TextFont.Width("8", Face.Serif, 10));
    }

    [Fact]
    public void Pairs_of_letters_are_kerned()
    {
        var apart = TextFont.Width("T", Face.SerifMedium, 10) + TextFont.Width("o", Face.SerifMedium, 10);

        Assert.InRange(apart - TextFont.Width("To", Face.SerifMedium, 10), 0.3, 1.5);
    }

    [Theory]
    [MemberData(nameof(Faces))]
    public void Width_grows_with_size_and_tracking(Face face) =>
        Gen.String[Gen.Char['a', 'z'], 0, 20]
            .Sample(
                text =>
                {
                    var plain = TextFont.Width(text, face, 4);
                    Assert.Equal(2 * plain, TextFont.Width(text, face, 8), 1e-9);
                    Assert.Equal(plain + (0.4 * text.Length), TextFont.Width(text, face, 4, 0.1), 1e-9);
                },
                iter: 50
            );

    [Theory]
    [MemberData(nameof(Faces))]
    public void Letters_rise_and_fall_as_letters_do(Face face)
    {
        var ink = TextFont.InkBox("Hxp", face, 10);

        Assert.InRange(-ink.Top, 4.5, 8);
        Assert.InRange(ink.Bottom, face == Face.SmallCaps ? -0.1 : 1.5, face == Face.SmallCaps ? 0.2 : 3.5);
    }

    [Theory]
    [InlineData("")]
    [InlineData("  ")]
    [InlineData("中")]
    public void Ink_of_nothing_drawn_is_empty(string text) =>
        Assert.Equal(default, TextFont.InkBox(text, Face.Serif, 10));

    [Fact]
    public void Any_text_can_be_measured() =>
        Gen.String[Gen.Char['\0', '\uFFFF'], 0, 12]
            .Sample(
                text =>
                {
                    Assert.True(TextFont.Width(text, Face.Serif, 4) >= 0);
                    Assert.True(double.IsFinite(TextFont.InkBox(text, Face.Serif, 4).Right));
                    TextFont.Missing(text, Face.Serif);
                },
                iter: 500
            );
}
