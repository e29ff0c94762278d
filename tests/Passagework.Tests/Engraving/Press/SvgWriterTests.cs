using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using CsCheck;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Press;

namespace Passagework.Tests.Engraving.Press;

public sealed partial class SvgWriterTests
{
    // Control characters, halves of pairs and all.
    private static readonly Gen<string> AnyText = Gen.String[
        Gen.OneOf(Gen.Char['\0', '\u007F'], Gen.Char['\0', '\uFFFF']),
        0,
        12
    ];

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    [Fact]
    public void The_same_page_gives_the_same_text() =>
        Assert.Equal(
            SvgWriter.Write(SamplePage.Page, SvgStyle.Print).OrThrow(),
            SvgWriter.Write(SamplePage.Page, SvgStyle.Print).OrThrow()
        );

    [Fact]
    public void A_small_page_is_written_as_accepted() =>
        GoldenPicture.Holds("small-page.svg", SvgWriter.Write(Small, SvgStyle.Screen).OrThrow());

    [Theory]
    [InlineData(SvgWords.Outlines)]
    [InlineData(SvgWords.Text)]
    public void Every_mark_is_an_element_in_order_with_its_hooks(SvgWords words)
    {
        var root = Root(SamplePage.Page, SvgStyle.Screen with { Words = words });

        var found = root.Elements()
            .Where(element => element.Attribute("data-kind") is not null)
            .Select(element =>
                (
                    element.Attribute("id")?.Value,
                    element.Attribute("data-kind")?.Value,
                    element.Attribute("data-note")?.Value,
                    element.Attribute("class")?.Value.Split(' ')[0]
                )
            );

        var expected = SamplePage.Page.Marks.Select(mark =>
            (
                (string?)mark.Id,
                (string?)mark.Kind,
                mark.Note?.ToString(CultureInfo.InvariantCulture),
                (string?)$"pw-{Lower(mark.Ink)}"
            )
        );
        Assert.Equal(expected, found);
    }

    [Fact]
    public void Page_is_measured_in_millimetres()
    {
        var root = Root(Small, SvgStyle.Print);

        Assert.Equal("62.5mm", root.Attribute("width")?.Value);
        Assert.Equal("20mm", root.Attribute("height")?.Value);
        Assert.Equal("0 0 62.5 20", root.Attribute("viewBox")?.Value);
    }

    [Theory]
    [InlineData(SvgWords.Outlines)]
    [InlineData(SvgWords.Text)]
    public void Markup_in_words_stays_words(SvgWords words)
    {
        var style = SvgStyle.Print with { Words = words, Title = SamplePage.Markup };
        var root = Root(SamplePage.Page with { Description = SamplePage.Markup }, style);
        var line = root.Elements().Single(element => element.Attribute("id")?.Value == "words-5");

        Assert.Equal(SamplePage.Markup, root.Element(Svg + "title")?.Value);
        Assert.Equal(SamplePage.Markup, root.Element(Svg + "desc")?.Value);
        Assert.EndsWith(
            SamplePage.Markup,
            words == SvgWords.Text ? line.Value : line.Attribute("aria-label")?.Value
        );
        Assert.Empty(
            root.DescendantsAndSelf()
                .Select(element => element.Name.LocalName)
                .Except(["defs", "desc", "g", "path", "style", "svg", "text", "title", "use"])
        );
    }

    [Fact]
    public void Any_words_come_back_from_the_picture() =>
        AnyText.Sample(text =>
        {
            var page = Small with { Description = text, Marks = [Small.Marks[0] with { Id = "x" + text }] };
            var root = Root(page, SvgStyle.Print with { IdPrefix = text });
            var mark = root.Elements().Last();

            Assert.Equal(Kept(text), root.Element(Svg + "desc")?.Value);
            Assert.Equal(Kept(text) + "x" + Kept(text), mark.Attribute("id")?.Value);
        });

    [Fact]
    public void Ids_are_unique_prefixed_and_found()
    {
        var root = Root(SamplePage.Page, SvgStyle.Print with { IdPrefix = "page-2-", Title = "Two" });
        var ids = root.DescendantsAndSelf().Attributes("id").Select(id => id.Value).ToList();

        Assert.Equal(ids.Count, ids.Distinct().Count());
        Assert.All(ids, id => Assert.StartsWith("page-2-", id));
        Assert.All(root.Descendants().Attributes("href"), use => Assert.Contains(use.Value[1..], ids));
        Assert.Contains(root.Attribute("aria-labelledby")?.Value, ids);
        Assert.Contains(root.Attribute("aria-describedby")?.Value, ids);
    }

    [Fact]
    public void Print_knows_black_and_white_only()
    {
        var svg = SvgWriter.Write(SamplePage.Page, SvgStyle.Print).OrThrow();

        Assert.Equal(["#000000", "#ffffff"], Colour().Matches(svg).Select(colour => colour.Value).Distinct());
        Assert.DoesNotContain("font-family", svg);
        Assert.DoesNotContain("var(", svg);
    }

    // The values of the look's light paper.
    [Theory]
    [InlineData(Ink.Main, "ink", "#1e1a15")]
    [InlineData(Ink.Soft, "soft", "#5a5348")]
    [InlineData(Ink.Staff, "staff", "#6e6658")]
    [InlineData(Ink.Rule, "rule", "#8b8272")]
    [InlineData(Ink.Hair, "hair", "#cfc6b4")]
    [InlineData(Ink.Fretting, "fretting", "#18416f")]
    [InlineData(Ink.Picking, "picking", "#9c5313")]
    [InlineData(Ink.Shade, "shade", "#f0eadc")]
    [InlineData(Ink.Paper, "paper", "#faf7f0")]
    public void Screen_takes_its_colours_from_the_page_around_it(Ink ink, string token, string colour)
    {
        var css = Root(Small, SvgStyle.Screen).Element(Svg + "style")?.Value;

        Assert.Contains($".pw-{Lower(ink)}{{color:{colour};color:var(--{token},{colour})}}", css);
    }

    [Fact]
    public void Words_as_text_are_text_but_signs_of_music_are_not()
    {
        var root = Root(SamplePage.Page, SvgStyle.Screen with { Words = SvgWords.Text });

        var plain = root.Elements().Single(element => element.Attribute("id")?.Value == "words-3");
        var withSigns = root.Elements().Single(element => element.Attribute("id")?.Value == "words-6");
        Assert.Equal("text", plain.Name.LocalName);
        Assert.Equal("Sans 0123456789: Быстрая гамма, ёжик – Ελληνικά με τόνους", plain.Value);
        Assert.Equal("pw-main pw-sans", plain.Attribute("class")?.Value);
        Assert.Equal("g", withSigns.Name.LocalName);
        Assert.Equal("Sans bold 0123456789: B♭ major, F♯, G♮", withSigns.Attribute("aria-label")?.Value);
    }

    [Fact]
    public void Style_sheet_can_be_left_to_the_page_around_it() =>
        Assert.Null(Root(Small, SvgStyle.Screen with { StyleSheet = false }).Element(Svg + "style"));

    private static Page Small { get; } =
        new(
            62.5,
            20,
            [
                new GlyphMark(Glyphs.NoteheadBlack, new(6, 12), 1.75)
                {
                    Id = "head",
                    Kind = "head",
                    Note = 3,
                },
                new TextMark("5", new(20, 12), Face.SansBold, 3.4)
                {
                    Id = "number",
                    Kind = "tab-number",
                    Note = 3,
                },
                new TextMark("B♭ “five”", new(40, 12), Face.Serif, 4)
                {
                    Id = "words",
                    Kind = "words",
                    Anchor = Anchor.Middle,
                },
                new LineMark(new(2, 15), new(60, 15), 0.2275)
                {
                    Id = "line",
                    Kind = "line",
                    Ink = Ink.Staff,
                    DashMm = [1, 0.5],
                },
                new LineMark(new(2, 4), new(2, 15), 0.21)
                {
                    Id = "stem",
                    Kind = "stem",
                    RoundEnds = true,
                },
                new CurveMark(new(4, 4), new(6, 2), new(10, 2), new(12, 4), 0.175, 0.385)
                {
                    Id = "tie",
                    Kind = "tie",
                },
                new PolygonMark([new(14, 2), new(18, 1), new(18, 2), new(14, 3)])
                {
                    Id = "beam",
                    Kind = "beam",
                },
                new PolygonMark([new(50, 2), new(54, 2), new(54, 6), new(50, 6)])
                {
                    Id = "column",
                    Kind = "column",
                    Ink = Ink.Picking,
                    Filling = Filling.Ruled,
                    OutlineMm = 0.2,
                },
                new CircleMark(new(58, 4), 2)
                {
                    Id = "dot",
                    Kind = "dot",
                    Filling = Filling.Paper,
                    OutlineMm = 0.3,
                },
            ]
        )
        {
            Description = "A little of everything.",
        };

    private static XElement Root(Page page, SvgStyle style) =>
        XDocument.Parse(SvgWriter.Write(page, style).OrThrow(), LoadOptions.PreserveWhitespace).Root!;

    private static string Lower(Ink ink) => ink.ToString().ToLowerInvariant();

    // What XML 1.0 cannot hold: most control characters, two codes that are no characters, halves of pairs.
    private static string Kept(string text) =>
        string.Concat(
            text.EnumerateRunes()
                .Select(letter =>
                    letter.Value is < ' ' and not ('\t' or '\n' or '\r') or 0xFFFE or 0xFFFF
                        ? "\uFFFD"
                        : letter.ToString()
                )
        );

    [GeneratedRegex("#[0-9a-f]{6}\\b", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Colour();
}
