using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;
using Passagework.Tests.Engraving.Press;

namespace Passagework.Tests.Engraving.Prints;

// Three pages beside each other in one window of Chromium, against our own dots.
public sealed class RealSvgTests
{
    private const int Scale = 2;
    private const double Dpi = 96 * Scale;
    private const int PageWidth = 820;
    private const int PageHeight = 1140;
    private const double MostForeign = 1e-5;

    private static readonly string[] Names = ["sheet-fives", "sheet-letter", "print-fives-and-back"];

    [Fact]
    public void Chromium_draws_real_pages_as_we_draw_the_png()
    {
        var window = Picture.From(Screenshot());

        for (var i = 0; i < Names.Length; i++)
        {
            var page = PageOf(Names[i]);
            var ours = Picture.Of(PngWriter.Write(page, Dpi).OrThrow());
            var theirs = window.Part(i * PageWidth * Scale, 0, ours.Width, ours.Height);
            var (mean, foreign) = ours.Against(theirs);

            Assert.InRange(foreign, 0, MostForeign);
            Assert.InRange(mean, 0, 0.005);
            // A page on which nothing is drawn would be as white as half of ours.
            Assert.InRange(theirs.Ink, ours.Ink * 0.98, ours.Ink * 1.02);
        }
    }

    private static Page PageOf(string name) => RealPages.All[name].Pages[0];

    private static string Screenshot()
    {
        var images = Names.Select(
            (name, i) =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"<img src=\"{Path.GetFileName(Printed.Svg(name + ".svg", PageOf(name), SvgStyle.Print))}\" style=\"position:absolute;top:0;left:{i * PageWidth}px\">"
                )
        );
        var html = Path.Combine(Printed.Folder, "real-pages.html");
        File.WriteAllText(html, $"<body style=\"margin:0;background:white\">{string.Concat(images)}</body>");
        return Chromium.Screenshot(html, Scale, (PageWidth * Names.Length, PageHeight));
    }
}
