using System.Text;
using System.Xml.Linq;

namespace Passagework.Cli.Tests;

/// <summary>Exercises as pictures, pages and sheets from the command line.</summary>
public sealed class PictureTests : IDisposable
{
    private readonly Session _session = new();

    [Fact]
    public void Svg_is_a_picture_with_a_mark_for_every_note()
    {
        var svg = XDocument.Parse(_session.Run("show", "groups-of-five-up", "--as", "svg").Out);

        var numbers = svg.Descendants().Count(mark => (string?)mark.Attribute("data-kind") == "tab-number");
        Assert.Equal("svg", svg.Root!.Name.LocalName);
        Assert.Equal(40, numbers);
    }

    [Theory]
    [InlineData("png", "89504E470D0A1A0A")]
    [InlineData("pdf", "255044462D")]
    public void Files_begin_as_their_kind_does(string form, string beginning)
    {
        var (code, _, error) = _session.Run("show", "groups-of-three-up", "--as", form);

        Assert.Equal((0, ""), (code, error));
        Assert.StartsWith(beginning, Convert.ToHexString(_session.Bytes.ToArray()), StringComparison.Ordinal);
    }

    [Fact]
    public void Sheet_has_a_page_for_each_exercise()
    {
        var file = Path.Combine(_session.Folder, "sheet.pdf");
        var (code, _, error) = _session.Run(
            "sheet",
            "groups-of-five-up",
            "groups-of-three-up",
            "--student",
            "Isolde",
            "--date",
            "2026-11-25",
            "-o",
            file
        );

        Assert.Equal((0, ""), (code, error));
        var pdf = Encoding.Latin1.GetString(File.ReadAllBytes(file));
        Assert.Equal(2, pdf.Split("/Type /Page\n").Length - 1);
    }

    [Theory]
    [InlineData(
        "show groups-of-five-up --as svg --staves three",
        "--staves: unknown staves 'three'; one of: staff-and-tab"
    )]
    [InlineData("show groups-of-five-up --as png --dpi many", "--dpi: 'many' is no resolution")]
    [InlineData("sheet groups-of-five-up --date 25.11.2026", "--date: '25.11.2026' is no date")]
    [InlineData("sheet groups-of-five-up --weeks 99", "--weeks: '99' is no number of weeks; 1 to 52")]
    [InlineData("sheet groups-of-five-up no-such", "no exercise 'no-such' in the library")]
    [InlineData("sheet groups-of-five-up --student 田中", "student: the page's typeface has no 田")]
    public void Bad_input_is_one_clear_line(string words, string expected)
    {
        var (code, output, error) = _session.Run(words.Split(' '));

        Assert.Equal((2, ""), (code, output));
        Assert.Contains(expected, error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd().Split('\n'));
    }

    public void Dispose() => _session.Dispose();
}
