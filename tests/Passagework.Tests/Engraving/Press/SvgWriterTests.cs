using Passagework.Engraving.Press;

namespace Passagework.Tests.Engraving.Press;

public sealed class SvgWriterTests
{
    [Fact]
    public void Sample()
    {
        Printed.Svg("sample.svg", SamplePage.Page, SvgStyle.Print);
        Printed.Svg("screen.svg", SamplePage.Page, SvgStyle.Screen);
        Printed.Svg("text.svg", SamplePage.Page, SvgStyle.Screen with { Words = SvgWords.Text });
        Printed.Png("sample.png", SamplePage.Page, 144);
        Printed.Png("light.png", SamplePage.Page, 144, Palette.Light);
        Printed.Png("dark.png", SamplePage.Page, 144, Palette.Dark);
        Printed.Pdf("sample.pdf", SamplePage.Document);
        Printed.Pdf("light.pdf", SamplePage.Document, Palette.Light);
    }
}
