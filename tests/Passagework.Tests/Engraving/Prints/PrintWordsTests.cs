using System.Xml.Linq;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;
using Passagework.Engraving.Prints;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using UglyToad.PdfPig;

namespace Passagework.Tests.Engraving.Prints;

/// <summary>Titles and purposes of every sort on a print: as they stand, cut visibly, or refused with their name.</summary>
public sealed class PrintWordsTests
{
    [Theory]
    [InlineData("<script>alert('x')</script> & \"more\"")]
    [InlineData("]]> &amp; <!-- --> ${x} {{y}} %s \\")]
    [InlineData("Étude, Übung, Žluťoučký, Τετράδες, Четвёрки, Nốt nhạc")]
    [InlineData("Fünf – fünf … “fünf” ‘5’")]
    public void Letters_and_markup_are_printed_as_they_stand(string title)
    {
        var measured = Titled(title).OrThrow();
        var page = ExercisePrint.Picture(measured, new PrintOptions()).OrThrow();
        var style = SvgStyle.Print with { Words = SvgWords.Text, Title = title };
        var svg = XDocument.Parse(SvgWriter.Write(page, style).OrThrow());
        var document = ExercisePrint.Pages(measured, new PrintOptions()).OrThrow();
        using var pdf = PdfDocument.Open(PdfWriter.Write(document).OrThrow());

        Assert.Equal(title, Words(page, "title"));
        Assert.Equal(title, svg.Root!.Elements().First(part => part.Name.LocalName == "title").Value);
        Assert.DoesNotContain(svg.Descendants(), part => part.Name.LocalName == "script");
        Assert.Equal(title, pdf.Information.Title);
        Assert.Empty(PrintInk.Wrong(page));
    }

    [Theory]
    [InlineData("五つの音", "五 (U+4E94)")]
    [InlineData("תרגיל", "ת (U+05EA)")]
    [InlineData("تمرين", "ت (U+062A)")]
    [InlineData("five \U0001F3B8", "\U0001F3B8 (U+1F3B8)")]
    [InlineData("half \uD83C", "U+FFFD")]
    [InlineData("turned \u202Eround", "U+202E")]
    public void Letters_that_the_typeface_lacks_are_named_with_their_place(string words, string named)
    {
        foreach (
            var (field, recipe) in new[]
            {
                ("title", Straight with { Title = words }),
                ("title", Straight with { Title = null, Id = words }),
                ("purpose", Straight with { Purpose = words }),
            }
        )
        {
            var measured = Played.Measured(recipe);
            var picture = ExercisePrint.Picture(measured, new PrintOptions()) as Outcome<Page>.Refused;
            var pages = ExercisePrint.Pages(measured, new PrintOptions()) as Outcome<Document>.Refused;

            Assert.Equal(field, picture?.Fault.Where);
            Assert.Contains("typeface has no ", picture!.Fault.What, StringComparison.Ordinal);
            Assert.Contains(named, picture.Fault.What, StringComparison.Ordinal);
            Assert.Equal(picture.Fault, pages!.Fault);
        }
    }

    [Theory]
    [InlineData("two\nlines")]
    [InlineData("bell \u0007")]
    [InlineData("nothing \0")]
    [InlineData("next \u0085line")]
    public void Control_characters_are_refused_by_the_recipe(string title) =>
        Assert.Equal("$.title", (Titled(title) as Outcome<Measurement>.Refused)!.Fault.Where);

    [Fact]
    public void A_title_of_400_letters_is_refused_by_the_recipe() =>
        Assert.Equal(
            "$.title: is no line of text; at most 200 letters, without line breaks",
            (Titled(new string('m', 400)) as Outcome<Measurement>.Refused)!.Fault.ToString()
        );

    [Theory]
    [InlineData('W')]
    [InlineData('i')]
    public void The_longest_title_and_purpose_are_cut_visibly(char letter)
    {
        var recipe = Straight with
        {
            Title = new string(letter, 200),
            Purpose = string.Join(' ', Enumerable.Repeat(new string(letter, 9), 100)),
        };
        var page = ExercisePrint.Picture(Played.Measured(recipe), new PrintOptions()).OrThrow();

        Assert.Empty(PrintInk.Wrong(page));
        Assert.Equal(letter == 'W', Words(page, "title").EndsWith('…'));
        Assert.EndsWith("…", Words(page, "purpose"), StringComparison.Ordinal);
        string[] told =
        [
            .. letter == 'W' ? ["the title is longer than four lines and was cut"] : Array.Empty<string>(),
            "the purpose is longer than four lines and was cut",
        ];
        Assert.Equal(told, page.Remarks);
        Assert.Equal(
            told,
            ExercisePrint.Pages(Played.Measured(recipe), new PrintOptions()).OrThrow().Pages[0].Remarks
        );
    }

    private static Recipe Straight => Played.Recipe("straight-up");

    private static Outcome<Measurement> Titled(string title) =>
        Measurer.Measure(Straight with { Title = title }, Player.At(2));

    private static string Words(Page page, string kind) =>
        string.Join(
            ' ',
            page.Marks.OfType<TextMark>().Where(mark => mark.Kind == kind).Select(mark => mark.Text)
        );
}
