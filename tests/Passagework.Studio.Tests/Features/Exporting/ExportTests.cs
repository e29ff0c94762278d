using System.Text;
using Passagework.Exercises;
using Passagework.Notation;
using Passagework.Studio.Features.Exercises;
using Passagework.Studio.Features.Exporting;
using UglyToad.PdfPig;

namespace Passagework.Studio.Tests.Features.Exporting;

public sealed class ExportTests : IAsyncLifetime
{
    private Room _room = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _room = await Room.Open();

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Fact]
    public async Task The_sheet_is_one_page_that_names_the_exercise_for_PdfPig()
    {
        using var pdf = PdfDocument.Open(await Bytes("sheet.pdf"));

        Assert.Equal(1, pdf.NumberOfPages);
        Assert.Contains("Groups of five, rising", pdf.GetPage(1).Text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_text_tab_and_the_idea_read_back_as_the_same_notes()
    {
        var tab = TextTab.Read(Encoding.UTF8.GetString(await Bytes("txt"))).OrThrow();
        var idea = RecipeJson.Read(await Bytes("json")).OrThrow();

        Assert.Equal(
            Places(LineBuilder.Build(idea).OrThrow()),
            Places(LineBuilder.Build(tab.Recipe).OrThrow())
        );
    }

    [Theory]
    [InlineData("pdf", "%PDF")]
    [InlineData("musicxml", "<?xm")]
    [InlineData("mxl", "PK\u0003\u0004")]
    [InlineData("mid", "MThd")]
    [InlineData("wav", "RIFF")]
    [InlineData("sheet.svg", "<svg")]
    [InlineData("svg", "<svg")]
    [InlineData("png", "\u0089PNG")]
    public async Task Every_form_begins_as_its_standard_says(string ending, string start) =>
        Assert.StartsWith(start, Encoding.Latin1.GetString(await Bytes(ending)), StringComparison.Ordinal);

    [Fact]
    public void No_form_is_left_out() =>
        Assert.Equal(
            ["sheet.pdf", "sheet.svg", "pdf", "txt", "musicxml", "mxl", "mid", "wav", "svg", "png", "json"],
            ExportForm.All.Select(form => form.Ending)
        );

    [Theory]
    [InlineData("Groups of five, rising", "groups-of-five-rising")]
    [InlineData("../../etc/passwd", "etc-passwd")]
    [InlineData("<script>", "script")]
    [InlineData("Œuvre ♯1", "œuvre-1")]
    [InlineData("///", "exercise")]
    public void File_names_hold_letters_and_digits_alone(string title, string name) =>
        Assert.Equal(name, FileName.Of(title));

    private async Task<byte[]> Bytes(string ending)
    {
        var file = (
            await _room
                .Feature<ExportExercise>()
                .Export(new ExerciseKey("groups-of-five-up"), ExportForm.Of(ending)!, null, Stop)
        ).OrThrow();
        await using var content = new MemoryStream();
        file.Write(content);
        return content.ToArray();
    }

    private static IEnumerable<string> Places(Line line) => line.Notes.Select(note => note.Place.ToString()!);
}
