using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Foundation;
using SkiaSharp;

namespace Passagework.Engraving.Press;

/// <summary>Prints pages as a PDF: lines and outlines, text that can be searched, only the letters used from each font.</summary>
public static class PdfWriter
{
    private const int MostPages = 2_000;
    private const float PointsPerMm = 72 / 25.4f;

    /// <summary>
    /// The document's file; the same document gives the same bytes, for no date is written. Refused when a page is too
    /// large, a text has letters that the typeface lacks, or there is no page.
    /// </summary>
    /// <param name="document">What to print.</param>
    /// <param name="palette">Colours; black on white when not given.</param>
    public static Outcome<byte[]> Write(Document document, Palette? palette = null)
    {
        if (document.Pages.Length is 0 or > MostPages)
        {
            return new Fault($"{document.Pages.Length} pages", Right: $"1 to {MostPages} pages");
        }

        var proofs = ImmutableArray.CreateBuilder<ImmutableArray<ReadyMark>>(document.Pages.Length);
        foreach (var page in document.Pages)
        {
            if (!Proof.Of(page).TryGet(out var marks, out var fault))
                return document.Pages.Length == 1 ? fault : fault.At($"page {proofs.Count + 1} ");

            proofs.Add(marks);
        }

        return Print(document, proofs.MoveToImmutable(), palette ?? Palette.Print);
    }

    private static byte[] Print(
        Document document,
        ImmutableArray<ImmutableArray<ReadyMark>> proofs,
        Palette palette
    )
    {
        using var file = new MemoryStream();
        using var fonts = new PrintedFonts(proofs.SelectMany(marks => marks));
        using (var pdf = SKDocument.CreatePdf(file, About(document)))
        {
            foreach (var (page, marks) in document.Pages.Zip(proofs))
            {
                var canvas = pdf.BeginPage(
                    (float)page.WidthMm * PointsPerMm,
                    (float)page.HeightMm * PointsPerMm
                );
                canvas.Scale(PointsPerMm);
                using var printer = new CanvasPrinter(canvas, palette, fonts);
                printer.Print(marks);
                pdf.EndPage();
            }
        }

        return file.ToArray();
    }

    private static SKDocumentPdfMetadata About(Document document) =>
        new()
        {
            Title = document.Title,
            Author = document.Author,
            Creator = "Passagework",
            Producer = "Passagework",
            RasterDpi = 300,
        };
}
