using System.Diagnostics;
using System.Text.Json.Nodes;
using System.Xml.Linq;

namespace Passagework.Cli.Tests;

/// <summary>Odd titles, sizes and lengths at the doors of pictures and pages: a page, or one clear line.</summary>
public sealed class PictureBoundsTests : IDisposable
{
    private readonly Session _session = new();

    [Theory]
    [InlineData("--as pdf --paper A3", "--paper: unknown paper 'A3'; did you mean 'A4'")]
    [InlineData("--as png --dpi 0", "--dpi: 0 dots per inch; 10 to 2400")]
    [InlineData("--as png --dpi 10000", "--dpi: 10000 dots per inch; 10 to 2400")]
    [InlineData("--as png --dpi 2000", "--dpi: a picture of ")]
    [InlineData("--as png --dpi 1e999", "--dpi: '1e999' is no resolution")]
    [InlineData("--as svg --tempo 0", "--tempo: ")]
    [InlineData("--as svg --tempo NaN", "--tempo: ")]
    public void Values_out_of_range_are_one_clear_line(string words, string expected)
    {
        var (code, output, error) = _session.Run([
            .. "show groups-of-five-up".Split(' '),
            .. words.Split(' '),
        ]);

        AssertRefused(expected, code, output, error);
    }

    [Theory]
    [InlineData("五つの音", "title: the page's typeface has no 五 (U+4E94)")]
    [InlineData("תרגיל", "title: the page's typeface has no ת (U+05EA)")]
    [InlineData("two\nlines", "$.title: is no line of text")]
    [InlineData("bell \u0007", "$.title: is no line of text")]
    public void A_title_that_can_t_be_printed_is_refused_at_every_door(string title, string expected)
    {
        var file = File(idea => idea["title"] = title);

        foreach (
            var words in new[] { "show {0} --as svg", "show {0} --as png", "show {0} --as pdf", "sheet {0}" }
        )
        {
            var (code, output, error) = _session.Run([
                .. words.Split(' ').Select(word => word == "{0}" ? file : word),
            ]);
            AssertRefused(expected, code, output, error);
        }
    }

    [Fact]
    public void A_title_of_400_letters_is_refused()
    {
        var file = File(idea => idea["title"] = new string('m', 400));
        var (code, output, error) = _session.Run("show", file, "--as", "svg");

        AssertRefused("$.title: is no line of text; at most 200 letters", code, output, error);
    }

    [Fact]
    public void Markup_in_a_title_stays_text()
    {
        var file = File(idea => idea["title"] = "<script>fives()</script> & \"more\"");
        var (code, output, _) = _session.Run("show", file, "--as", "svg");
        var svg = XDocument.Parse(output);

        Assert.Equal(0, code);
        Assert.DoesNotContain(svg.Descendants(), mark => mark.Name.LocalName == "script");
    }

    [Fact]
    public void Five_thousand_notes_are_pages_and_no_single_picture()
    {
        var file = File(idea => idea["movement"] = new JsonObject { ["repeat"] = 125 });
        var watch = Stopwatch.StartNew();
        var pdf = _session.Run("show", file, "--as", "pdf");
        var bytes = _session.Bytes.ToArray().Length;
        var svg = _session.Run("show", file, "--as", "svg");

        Assert.Equal((0, ""), (pdf.Code, pdf.Error));
        Assert.InRange(bytes, 100_000, 8_000_000);
        AssertRefused(" mm high; at most 2000 mm: fewer bars, or pages (PDF)", svg.Code, svg.Out, svg.Error);
        // Some 3 s on two quiet cores for both.
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(20), $"{watch.Elapsed}");
    }

    public void Dispose() => _session.Dispose();

    private static void AssertRefused(string expected, int code, string output, string error)
    {
        Assert.Equal((2, ""), (code, output));
        Assert.Contains(expected, error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd().Split('\n'));
    }

    private string File(Action<JsonNode> change)
    {
        var idea = JsonNode.Parse(_session.Run("show", "groups-of-five-up", "--as", "json").Out)!;
        change(idea);
        return _session.Write("idea.json", idea.ToJsonString());
    }
}
