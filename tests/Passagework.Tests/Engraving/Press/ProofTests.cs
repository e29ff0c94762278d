using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;
using Passagework.Foundation;

namespace Passagework.Tests.Engraving.Press;

public sealed class ProofTests
{
    [Theory]
    [InlineData(0, 10, "the page measures 0 × 10 mm")]
    [InlineData(10, -1, "the page measures 10 × -1 mm")]
    [InlineData(2000.5, 10, "the page measures 2000.5 × 10 mm")]
    [InlineData(double.NaN, 10, "the page measures NaN × 10 mm")]
    public void A_page_out_of_bounds_is_refused(double width, double height, string what) =>
        AssertRefused(new Page(width, height, []), new Fault(what, Right: "sides above 0 and up to 2000 mm"));

    [Fact]
    public void Letters_that_no_font_has_are_named() =>
        AssertRefused(
            With(new TextMark("五 notes", new(1, 5), Face.Serif, 4) { Id = "t", Kind = "words" }),
            new Fault(
                "the page's typeface has no 五 (U+4E94)",
                "'五 notes'",
                "letters of Latin, Greek or Cyrillic script, Vietnamese too, on one line"
            )
        );

    [Fact]
    public void A_sign_that_the_music_font_lacks_is_refused() =>
        AssertRefused(
            With(new GlyphMark(0x4E94, new(1, 5), 2) { Id = "g", Kind = "sign" }),
            new Fault("the music font has no U+4E94", "mark 'g'", "a sign that it has")
        );

    [Fact]
    public void A_figure_needs_three_corners() =>
        AssertRefused(
            With(new PolygonMark([new(1, 1), new(2, 2)]) { Id = "p", Kind = "figure" }),
            new Fault("a figure with fewer than three corners", "mark 'p'", "at least three")
        );

    public static TheoryData<Mark> OutOfReach =>
        [
            new GlyphMark(0xE0A4, new(1, double.NaN), 2) { Id = "m", Kind = "k" },
            new LineMark(new(1, 1), new(2, 10_001), 1) { Id = "m", Kind = "k" },
            new LineMark(new(1, 1), new(2, 1), 1)
            {
                Id = "m",
                Kind = "k",
                DashMm = [1, double.NaN],
            },
            new CurveMark(new(1, 1), new(-20_000, 1), new(1, 1), new(1, 1), 1, 1) { Id = "m", Kind = "k" },
            new TextMark("a", new(1, 1), Face.Sans, double.PositiveInfinity) { Id = "m", Kind = "k" },
            new PolygonMark([new(1, 1), new(2, 2), new(double.NegativeInfinity, 3)]) { Id = "m", Kind = "k" },
            new CircleMark(new(1, 1), 30_000) { Id = "m", Kind = "k" },
        ];

    [Theory]
    [MemberData(nameof(OutOfReach))]
    public void A_mark_out_of_reach_is_refused(Mark mark) =>
        AssertRefused(
            With(mark),
            new Fault("a place or length is not a number or out of reach", "mark 'm'", "up to 10000 mm")
        );

    [Fact]
    public void A_fault_on_one_of_several_pages_says_which()
    {
        var bad = With(new TextMark("五", new(1, 5), Face.Serif, 4) { Id = "t", Kind = "words" });

        var refused = PdfWriter.Write(new Document([With(), bad], "Two"));

        Assert.False(refused.TryGet(out _, out var fault));
        Assert.Equal("page 2 '五'", fault.Where);
    }

    [Fact]
    public void A_document_needs_a_page()
    {
        Assert.False(PdfWriter.Write(new Document([], "None")).TryGet(out _, out var fault));
        Assert.Equal(new Fault("0 pages", Right: "1 to 2000 pages"), fault);
    }

    [Theory]
    [InlineData(9.9, "9.9 dots per inch", "10 to 2400")]
    [InlineData(2401, "2401 dots per inch", "10 to 2400")]
    [InlineData(double.NaN, "NaN dots per inch", "10 to 2400")]
    [InlineData(1200, "a picture of 139,225,504 dots", "40,000,000 at most: 643 dots per inch")]
    public void A_picture_out_of_bounds_is_refused(double dpi, string what, string right)
    {
        Assert.False(PngWriter.Write(new Page(210, 297, []), dpi).TryGet(out _, out var fault));
        Assert.Equal(new Fault(what, Right: right), fault);
    }

    private static Page With(params Mark[] marks) => new(40, 20, [.. marks]);

    private static void AssertRefused(Page page, Fault expected)
    {
        Assert.False(SvgWriter.Write(page, SvgStyle.Print).TryGet(out _, out var svg));
        Assert.False(PdfWriter.Write(new Document([page], "One")).TryGet(out _, out var pdf));
        Assert.False(PngWriter.Write(page, 96).TryGet(out _, out var png));
        Assert.Equal(expected, svg);
        Assert.Equal(expected, pdf);
        Assert.Equal(expected, png);
    }
}
