using Passagework.Engraving.Press;
using Passagework.Tests.Outside;

namespace Passagework.Tests.Engraving.Press;

// Three programs draw the same page: we as PNG, poppler from the PDF, Chromium from the SVG.
// A digit of the page has some 150 dots; a share of one in 100,000 is 46 of them.
public sealed class RastersTests
{
    private const double Dpi = 288;
    private const double MostForeign = 1e-5;

    [Fact]
    public void Poppler_draws_the_pdf_as_we_draw_the_png()
    {
        var pdf = Printed.Pdf("poppler.pdf", SamplePage.Document);
        var stem = Path.ChangeExtension(pdf, null);
        OutsideProgram.Run("pdftoppm", ["-r", $"{Dpi}", "-png", "-singlefile", pdf, stem]);
        var theirs = Picture.From(stem + ".png");

        var (mean, foreign) = Ours.Value.Against(theirs);

        Assert.Equal((2041, 2268), (theirs.Width, theirs.Height));
        Assert.InRange(foreign, 0, MostForeign);
        // Poppler moves thin lines to whole dots.
        Assert.InRange(mean, 0, 0.012);
    }

    [Fact]
    public void Chromium_draws_the_svg_as_we_draw_the_png()
    {
        var svg = Printed.Svg("chromium.svg", SamplePage.Page, SvgStyle.Print);

        var (mean, foreign) = Ours.Value.Against(Screenshot(svg));

        Assert.InRange(foreign, 0, MostForeign);
        Assert.InRange(mean, 0, 0.005);
    }

    [Fact]
    public void Chromium_draws_the_screens_colours()
    {
        var svg = Printed.Svg("chromium-screen.svg", SamplePage.Page, SvgStyle.Screen);
        var ours = Picture.Of(PngWriter.Write(SamplePage.Page, Dpi, Palette.Light).OrThrow());

        var (_, foreign) = ours.Against(Screenshot(svg));

        Assert.InRange(foreign, 0, MostForeign);
    }

    [Fact]
    public void Chromium_without_any_fonts_draws_the_same()
    {
        var svg = Printed.Svg("chromium-bare.svg", SamplePage.Page, SvgStyle.Print);
        var empty = Path.Combine(Printed.Folder, "no-fonts.conf");
        File.WriteAllText(empty, "<?xml version=\"1.0\"?><fontconfig/>");

        var (mean, foreign) = Screenshot(svg).Against(Screenshot(svg, ("FONTCONFIG_FILE", empty)));

        Assert.Equal((0, 0), (mean, foreign));
    }

    [Fact]
    public void A_mark_that_is_missing_or_in_another_place_is_seen()
    {
        var marks = SamplePage.Page.Marks;
        var number = marks.Single(mark => mark.Id == "number-3");
        var without = SamplePage.Page with { Marks = marks.Remove(number) };

        var (_, foreign) = Ours.Value.Against(Picture.Of(PngWriter.Write(without, Dpi).OrThrow()));

        Assert.InRange(foreign, 2 * MostForeign, 1);
    }

    private static readonly Lazy<Picture> Ours = new(() =>
        Picture.Of(PngWriter.Write(SamplePage.Page, Dpi).OrThrow())
    );

    private static Picture Screenshot(string svg, params (string, string)[] environment) =>
        Picture.From(Chromium.Screenshot(svg, Dpi / 96, (700, 780), environment));
}
