using System.Buffers.Binary;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;

namespace Passagework.Tests.Engraving.Press;

public sealed class PngWriterTests
{
    private static readonly Page Square = new(
        25.4,
        50.8,
        [
            new PolygonMark([new(5.08, 5.08), new(10.16, 5.08), new(10.16, 10.16), new(5.08, 10.16)])
            {
                Id = "square",
                Kind = "figure",
                Ink = Ink.Fretting,
            },
        ]
    );

    [Fact]
    public void The_same_page_gives_the_same_bytes() =>
        Assert.Equal(
            PngWriter.Write(SamplePage.Page, 96).OrThrow(),
            PngWriter.Write(SamplePage.Page, 96).OrThrow()
        );

    [Theory]
    [InlineData(50, 50, 100)]
    [InlineData(100, 100, 200)]
    [InlineData(300, 300, 600)]
    public void Picture_has_so_many_dots_per_inch(double dpi, int width, int height)
    {
        var picture = Picture.Of(PngWriter.Write(Square, dpi).OrThrow());

        Assert.Equal((width, height), (picture.Width, picture.Height));
    }

    [Fact]
    public void Dots_are_dark_where_the_mark_is()
    {
        var picture = Picture.Of(PngWriter.Write(Square, 50).OrThrow());

        Assert.Equal(
            [255, 0, 0, 255],
            [picture.At(9, 15), picture.At(10, 10), picture.At(19, 19), picture.At(20, 15)]
        );
    }

    [Fact]
    public void Picture_says_how_large_it_is_to_be_printed()
    {
        var png = PngWriter.Write(Square, 300).OrThrow();
        var at = png.AsSpan().IndexOf("pHYs"u8);

        // 300 dots in 0.0254 m; the unit is the metre (PNG specification, chunk pHYs).
        Assert.Equal(11811, BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at + 4)));
        Assert.Equal(11811, BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(at + 8)));
        Assert.Equal(1, png[at + 12]);
        // The check sum of exactly these bytes, computed outside (zlib's crc32).
        Assert.Equal(0x78A53F76u, BinaryPrimitives.ReadUInt32BigEndian(png.AsSpan(at + 13)));
    }

    [Fact]
    public void Colours_are_the_palettes()
    {
        using var picture = SkiaSharp.SKBitmap.Decode(PngWriter.Write(Square, 50, Palette.Light).OrThrow());

        Assert.Equal(0xFF18416Fu, (uint)picture.GetPixel(15, 15));
        Assert.Equal(0xFFFAF7F0u, (uint)picture.GetPixel(5, 5));
    }
}
