using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Tests.Engraving.Press;
using Passagework.Tests.Outside;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using Page = Passagework.Engraving.Drawing.Page;

namespace Passagework.Tests.Engraving.Prints;

// A dozen real documents, read back by two programs that are not ours: PdfPig and poppler.
public sealed class RealPdfTests
{
    private const double PointsPerMm = 72 / 25.4;

    // A fret number has some 90 dots at this resolution; one in 50,000 is 87 of an A4 page.
    private const double Dpi = 216;
    private const double MostForeign = 2e-5;

    public static TheoryData<string> Names => [.. RealPages.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Title_pages_and_every_fret_number_can_be_read_back(string name)
    {
        var document = RealPages.All[name];
        using var pdf = PdfDocument.Open(File.ReadAllBytes(Printed.Pdf($"{name}.pdf", document)));
        var numbers = 0;

        Assert.Equal(document.Title, pdf.Information.Title);
        Assert.Equal(document.Pages.Length, pdf.NumberOfPages);
        foreach (var (page, number) in document.Pages.Select((page, i) => (page, i + 1)))
        {
            var read = pdf.GetPage(number);
            var letters = read.Letters.ToLookup(letter => Math.Round(letter.StartBaseLine.Y));
            foreach (var mark in page.Marks.OfType<TextMark>().Where(IsReadBack))
            {
                Assert.Equal((mark.Id, mark.Text), (mark.Id, TextAt(mark, page, letters)));
                numbers += mark.Kind == "tab-number" ? 1 : 0;
            }
        }

        Assert.Equal(document.Title, string.Join(' ', Texts(document, "title")));
        Assert.True(numbers >= 12, $"{numbers} fret numbers");
    }

    [Fact]
    public void Poppler_finds_every_font_embedded_and_mapped_to_letters()
    {
        foreach (var (name, document) in RealPages.All)
        {
            var fonts = OutsideProgram
                .Run("pdffonts", [Printed.Pdf($"{name}.pdf", document)])
                .Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Skip(2)
                .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
                .ToList();

            // Columns from the right: object and generation, Unicode map, subset, embedded.
            Assert.InRange(fonts.Count, 3, 20);
            Assert.All(fonts, font => Assert.Equal((name, "yes", "yes"), (name, font[^5], font[^3])));
        }
    }

    [Fact]
    public void Poppler_draws_every_page_as_we_draw_the_png()
    {
        var wrong = new List<string>();
        foreach (var (name, document) in RealPages.All)
        {
            var stem = Path.Combine(Printed.Folder, $"{name}-poppler");
            var pdf = Printed.Pdf($"{name}.pdf", document);
            OutsideProgram.Run("pdftoppm", ["-r", $"{Dpi}", "-gray", pdf, stem]);
            for (var i = 0; i < document.Pages.Length; i++)
            {
                var ours = Picture.From(Printed.Png($"{name}-{i + 1}.png", document.Pages[i], Dpi));
                var theirs = Picture.FromGreyMap($"{stem}-{i + 1}.pgm");
                var (mean, foreign) = ours.Against(theirs);
                // Poppler moves thin lines to whole dots.
                if (foreign > MostForeign || mean > 0.015)
                {
                    wrong.Add(System.FormattableString.Invariant($"{name} {i + 1}: {mean:G3}, {foreign:G3}"));
                }
            }
        }

        Assert.Empty(wrong);
    }

    private static bool IsReadBack(TextMark mark) => mark.Kind is "tab-number" or "title" or "purpose";

    private static IEnumerable<string> Texts(Document document, string kind) =>
        document.Pages[0].Marks.OfType<TextMark>().Where(mark => mark.Kind == kind).Select(mark => mark.Text);

    // The letters on the mark's baseline between its ends.
    private static string TextAt(TextMark mark, Page page, ILookup<double, Letter> letters)
    {
        var width = TextFont.Width(mark.Text, mark.Face, mark.SizeMm, mark.TrackingEm);
        var left = mark.At.X - (mark.Anchor == Anchor.Middle ? width / 2 : 0);
        var y = (page.HeightMm - mark.At.Y) * PointsPerMm;
        return string.Concat(
            new[] { Math.Floor(y) - 1, Math.Floor(y), Math.Floor(y) + 1, Math.Floor(y) + 2 }
                .SelectMany(row => letters[row])
                .Where(letter =>
                    Math.Abs(letter.StartBaseLine.Y - y) < 0.6
                    && letter.StartBaseLine.X > (left * PointsPerMm) - 0.1
                    && letter.StartBaseLine.X < ((left + width) * PointsPerMm) - 0.1
                )
                .OrderBy(letter => letter.StartBaseLine.X)
                .Select(letter => letter.Value)
        );
    }
}
