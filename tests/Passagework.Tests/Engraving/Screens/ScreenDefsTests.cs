using System.Globalization;
using System.Xml.Linq;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Press;
using Passagework.Engraving.Screens;

namespace Passagework.Tests.Engraving.Screens;

public sealed class ScreenDefsTests
{
    private static readonly XElement Defs = XElement.Parse(ScreenDefs.Markup);

    [Fact]
    public void A_page_holds_less_than_forty_thousand_bytes_of_them() =>
        Assert.InRange(ScreenDefs.Markup.Length, 20_000, 40_000);

    [Theory]
    [InlineData("pw-main-e0a4")]
    [InlineData("pw-fretting-ed11")]
    [InlineData("pw-picking-e610")]
    [InlineData("pw-paper-e260")]
    public void A_sign_is_its_outline_at_a_staff_space_to_the_unit_in_its_ink(string id)
    {
        var marker = Element(id);
        var sign = int.Parse(id.Split('-')[2], NumberStyles.HexNumber, CultureInfo.InvariantCulture);

        Assert.True(MusicFont.Cut.TryGlyph(sign, out var glyph));
        var path = Assert.Single(marker.Elements());
        Assert.Equal(MusicFont.Cut.OutlineOf(glyph).Data, path.Attribute("d")?.Value);
        // Bravura has 1000 units to the em, SMuFL four spaces.
        Assert.Equal("scale(.004)", path.Attribute("transform")?.Value);
        Assert.Equal(id[..^5], marker.Attribute("class")?.Value);
        Assert.Equal("visible", marker.Attribute("overflow")?.Value);
    }

    [Fact]
    public void A_skip_is_two_full_marks_and_a_hollow_one_between()
    {
        var round = CompactReading.Of(Element("pw-fretting-move-0-1").ToString()).Things;
        var pointed = CompactReading.Of(Element("pw-picking-move-0-1").ToString()).Things;

        Assert.Equal(
            [
                "dot pw-fretting pw-line 5.4  0.0,-7.4",
                "dot pw-fretting pw-line 5.4  0.0,7.4",
                "dot pw-fretting pw-line 6.5  0.0,0.0",
                "dot pw-paper pw-line 4.3  0.0,0.0",
            ],
            round
        );
        Assert.Equal(
            3,
            pointed.Count(thing => thing.StartsWith("figure pw-picking", StringComparison.Ordinal))
        );
        Assert.Single(pointed, thing => thing.Contains("pw-ground", StringComparison.Ordinal));
    }

    [Fact]
    public void A_sign_without_a_marker_is_drawn_by_its_outline()
    {
        const int coda = Glyphs.Coda;
        var svg = new System.Text.StringBuilder("<svg>");
        var elements = new CompactSvg(new PxFrame(2));
        var mark = new GlyphMark(coda, new Point(10, 20), 1.5) { Id = "coda", Kind = "sign" };
        elements.Add(ReadyMark.Of(mark));
        elements.Write(svg);

        var path = XElement.Parse(svg.Append("</svg>").ToString()).Elements().Single();

        Assert.Equal("translate(20 40)scale(.012)", path.Attribute("transform")?.Value);
        Assert.Equal(SignDefs.OutlineOf(coda), path.Attribute("d")?.Value);
        Assert.Equal("pw-main", path.Attribute("class")?.Value);
    }

    [Fact]
    public void The_style_sheet_says_every_class_of_a_picture()
    {
        var measured = Played.Measured("groups-of-five-up");
        var system = ScreenScore.Draw(measured, new ScreenOptions { Chosen = 3 }).OrThrow().Systems[0];
        var classes = XElement
            .Parse(system.Svg)
            .Descendants()
            .Concat(Defs.DescendantsAndSelf())
            .SelectMany(element => (element.Attribute("class")?.Value ?? "").Split(' '))
            .Where(name => name.Length > 0)
            .Distinct()
            // A hook for the page; it needs no rule.
            .Except(["pw-hits"]);

        Assert.DoesNotContain(
            classes,
            name => !ScreenDefs.StyleSheet.Contains($".{name}{{", StringComparison.Ordinal)
        );
    }

    private static XElement Element(string id) =>
        Defs.Descendants().Single(element => element.Attribute("id")?.Value == id);
}
