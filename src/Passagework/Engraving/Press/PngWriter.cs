using System.Collections.Immutable;
using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Foundation;
using SkiaSharp;

namespace Passagework.Engraving.Press;

/// <summary>Prints a page as a picture of dots.</summary>
public static class PngWriter
{
    private const double MmPerInch = 25.4;
    private const double LeastDpi = 10;
    private const double MostDpi = 2_400;
    private const double MostDots = 40_000_000;

    /// <summary>
    /// The picture's file, which also says how large it is to be printed; the same page gives the same bytes. Refused
    /// when it would have more than 40 million dots, or a text has letters that the typeface lacks.
    /// </summary>
    /// <param name="page">What to print.</param>
    /// <param name="dpi">Dots per inch, 10 to 2,400.</param>
    /// <param name="palette">Colours; black on white when not given.</param>
    public static Outcome<byte[]> Write(Page page, double dpi, Palette? palette = null) =>
        Proof
            .Of(page)
            .Then(marks =>
                Refusal(page, dpi) is { } fault
                    ? fault
                    : (Outcome<byte[]>)Print(page, dpi, palette ?? Palette.Print, marks)
            );

    /// <summary>Why a page cannot be printed at a resolution; null where it can.</summary>
    public static Fault? Refusal(Page page, double dpi) =>
        dpi is >= LeastDpi and <= MostDpi
            ? TooLarge(page, dpi)
            : new Fault(
                string.Create(CultureInfo.InvariantCulture, $"{dpi} dots per inch"),
                Right: $"{LeastDpi} to {MostDpi}"
            );

    private static Fault? TooLarge(Page page, double dpi)
    {
        var dots = Dots(page.WidthMm, dpi) * (double)Dots(page.HeightMm, dpi);
        return dots <= MostDots
            ? null
            : new Fault(
                string.Create(CultureInfo.InvariantCulture, $"a picture of {dots:N0} dots"),
                Right: string.Create(
                    CultureInfo.InvariantCulture,
                    $"{MostDots:N0} at most: {Math.Floor(dpi * Math.Sqrt(MostDots / dots))} dots per inch"
                )
            );
    }

    private static byte[] Print(Page page, double dpi, Palette palette, ImmutableArray<ReadyMark> marks)
    {
        var scale = (float)(dpi / MmPerInch);
        var size = new SKImageInfo(
            Dots(page.WidthMm, dpi),
            Dots(page.HeightMm, dpi),
            palette.IsGrey ? SKColorType.Gray8 : SKColorType.Rgba8888,
            SKAlphaType.Opaque
        );
        using var surface = SKSurface.Create(size);
        surface.Canvas.Clear(new SKColor(0xFF000000 | (uint)palette.Of(Ink.Paper)));
        surface.Canvas.Scale(scale);
        using (var printer = new CanvasPrinter(surface.Canvas, palette))
        {
            printer.Print(marks);
        }

        using var pixels = surface.PeekPixels();
        using var file = new MemoryStream();
        pixels.Encode(file, new SKPngEncoderOptions(SKPngEncoderFilterFlags.Up, 6));
        return PngResolution.Put(file.ToArray(), dpi / MmPerInch * 1000);
    }

    private static int Dots(double mm, double dpi) => (int)Math.Ceiling((mm * dpi / MmPerInch) - 1e-6);
}
