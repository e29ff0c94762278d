using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Press;
using Passagework.Tests.Outside;
using UglyToad.PdfPig;

namespace Passagework.Tests.Engraving.Press;

// Read back by two programs that are not ours: PdfPig and poppler.
public sealed class PdfWriterTests
{
    private static readonly byte[] File = PdfWriter.Write(SamplePage.Document).OrThrow();

    [Fact]
    public void The_same_document_gives_the_same_bytes() =>
        Assert.Equal(File, PdfWriter.Write(SamplePage.Document).OrThrow());

    [Fact]
    public void Document_says_what_it_is_and_no_date()
    {
        using var pdf = PdfDocument.Open(File);

        Assert.Equal("Fünf “Gruppen” & <mehr>", pdf.Information.Title);
        Assert.Equal("Hedda Quill", pdf.Information.Author);
        Assert.Equal("Passagework", pdf.Information.Creator);
        Assert.Equal("Passagework", pdf.Information.Producer);
        Assert.Null(pdf.Information.CreationDate);
        Assert.Null(pdf.Information.ModifiedDate);
    }

    [Fact]
    public void Pages_have_their_size()
    {
        using var pdf = PdfDocument.Open(File);

        Assert.Equal(2, pdf.NumberOfPages);
        // 180 and 200 mm in points of 1/72 inch.
        Assert.Equal(510.24, pdf.GetPage(2).Width, 0.01);
        Assert.Equal(566.93, pdf.GetPage(2).Height, 0.06);
    }

    [Fact]
    public void Every_line_of_words_can_be_read_back()
    {
        using var pdf = PdfDocument.Open(File);
        var text = string.Concat(pdf.GetPage(1).Letters.Select(letter => letter.Value));

        Assert.All(
            SamplePage.Page.Marks.OfType<TextMark>(),
            mark => Assert.Contains(mark.Text, text, StringComparison.Ordinal)
        );
    }

    [Fact]
    public void Every_sign_of_music_can_be_read_back()
    {
        using var pdf = PdfDocument.Open(File);
        var letters = pdf.GetPage(1).Letters.Select(letter => letter.Value).ToImmutableHashSet();

        Assert.All(
            GlyphNames.ByCodePoint.Keys,
            code => Assert.Contains(char.ConvertFromUtf32(code), letters)
        );
    }

    [Fact]
    public void Letters_stand_where_they_were_set()
    {
        using var pdf = PdfDocument.Open(File);
        var number = SamplePage.Page.Marks.OfType<TextMark>().Single(mark => mark.Id == "number-15");
        var width = TextFont.Width("20", Face.SansBold, number.SizeMm);
        const double pointsPerMm = 72 / 25.4;

        var digits = pdf.GetPage(1).Letters.TakeLast(2).ToList();

        Assert.Equal(["2", "0"], digits.Select(digit => digit.Value));
        Assert.Equal((number.At.X - (width / 2)) * pointsPerMm, digits[0].StartBaseLine.X, 0.05);
        Assert.Equal(number.At.X * pointsPerMm, digits[1].StartBaseLine.X, 0.05);
        Assert.Equal(566.93 - (number.At.Y * pointsPerMm), digits[0].StartBaseLine.Y, 0.1);
        Assert.Equal(number.SizeMm * pointsPerMm, digits[0].PointSize, 0.05);
    }

    [Fact]
    public void Every_font_is_embedded_with_a_map_to_letters_and_those_of_words_are_named_subsets()
    {
        var fonts = Fonts(Printed.Pdf("fonts.pdf", SamplePage.Document));
        var named = fonts.Where(font => font[0] != "[none]").ToList();

        // Columns from the right: object and generation, Unicode map, subset, embedded.
        Assert.All(fonts, font => Assert.Equal(("yes", "yes"), (font[^5], font[^3])));
        Assert.All(named, font => Assert.Equal(("yes", "TrueType"), (font[^4], font[2])));
        Assert.Equal(
            [
                "Alegreya-Italic",
                "Alegreya-Medium",
                "Alegreya-Regular",
                "AlegreyaSans-Bold",
                "AlegreyaSans-Italic",
                "AlegreyaSans-Medium",
                "AlegreyaSans-Regular",
                "AlegreyaSansSC-Medium",
            ],
            named.Select(font => font[0].Split('+')[1]).Distinct().Order(StringComparer.Ordinal)
        );
    }

    [Fact]
    public void Only_the_letters_that_occur_are_embedded()
    {
        static int Size(string text) =>
            PdfWriter
                .Write(
                    new Document(
                        [
                            new Page(
                                100,
                                20,
                                [new TextMark(text, new(5, 10), Face.Serif, 4) { Id = "t", Kind = "k" }]
                            ),
                        ],
                        "Size"
                    )
                )
                .OrThrow()
                .Length;

        // The whole file of the face would take 25 KB.
        Assert.InRange(Size("a"), 1_000, 5_000);
        Assert.InRange(Size("abcdefgh"), Size("a") + 300, 8_000);
    }

    [Fact]
    public void Poppler_reads_the_lines_as_lines()
    {
        var said = OutsideProgram.Run("pdftotext", [Printed.Pdf("text.pdf", SamplePage.Document), "-"]);
        var lines = said.Split('\n');

        Assert.All(
            SamplePage
                .Page.Marks.OfType<TextMark>()
                .Where(mark => mark.Id.StartsWith("words-", StringComparison.Ordinal)),
            mark => Assert.Contains(mark.Text, lines)
        );
    }

    private static List<string[]> Fonts(string pdf) =>
        [
            .. OutsideProgram
                .Run("pdffonts", [pdf])
                .Split('\n', StringSplitOptions.RemoveEmptyEntries)
                .Skip(2)
                .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)),
        ];
}
