using System.Text;
using Microsoft.Playwright;
using Passagework.Notation;
using Passagework.Repertoire;
using Passagework.Studio.Tests.Hosting;

namespace Passagework.Studio.Tests.Browsing;

[Collection(BrowserTests.Name)]
public sealed class PiecesPageTests(Chromium chromium, OneStudio one)
{
    private StudioProcess Studio => one.Studio;

    [Fact]
    public async Task A_piece_is_added_its_hardest_moves_are_found_in_score_and_list_and_it_can_go_and_come_back()
    {
        await using var desk = await Desk.At(Studio, chromium);
        await desk.Open("/pieces/import");
        await desk
            .Page.Locator("input[type=file]")
            .SetInputFilesAsync(
                new FilePayload
                {
                    Name = "Iron Gate & <b>.mid",
                    MimeType = "audio/midi",
                    Buffer = Midi.Write(Played("iron-stair")),
                }
            );
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Look it through" }).ClickAsync();
        await desk.Page.WaitForURLAsync(url =>
            url.LastIndexOf("/pieces/", StringComparison.Ordinal) == url.Length - ("/pieces/".Length + 32)
        );
        var key = desk.Page.Url[^32..];

        Assert.Equal(Numbers, await desk.Page.Locator("ol .number").AllInnerTextsAsync());
        Assert.Equal(
            Numbers.Order(StringComparer.Ordinal),
            (await desk.Page.Locator(".score text.number").AllTextContentsAsync()).Order(
                StringComparer.Ordinal
            )
        );
        Assert.Equal("", await desk.Barriers());

        await desk.Open("/pieces");
        var row = desk
            .Page.Locator("tr")
            .Filter(new() { Has = desk.Page.Locator($"a[href='/pieces/{key}']") });
        Assert.Contains("from Iron Gate & <b>.mid", await row.InnerTextAsync(), StringComparison.Ordinal);
        await row.GetByRole(AriaRole.Button, new() { Name = "Throw away" }).ClickAsync();
        Assert.Equal(0, await row.CountAsync());
        await desk
            .Page.GetByRole(AriaRole.Button, new() { Name = "Bring it back", Exact = true })
            .ClickAsync();
        Assert.Equal(1, await row.CountAsync());
        Assert.Empty(desk.Faults);
    }

    [Fact]
    public async Task Another_player_and_technique_give_other_moves_and_what_cannot_be_read_is_named()
    {
        await using var desk = await Desk.At(Studio, chromium);
        await desk.Open("/pieces/corner-table");
        var first = await desk.Page.Locator("ol").InnerTextAsync();
        await desk.Page.GetByLabel("technique").SelectOptionAsync("all-down");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Show" }).ClickAsync();
        Assert.NotEqual(first, await desk.Page.Locator("ol").InnerTextAsync());
        Assert.Contains("technique=all-down", desk.Page.Url, StringComparison.Ordinal);

        await desk.Open("/pieces/corner-table?level=legend");
        Assert.Contains(
            "'legend'",
            await desk.Page.GetByRole(AriaRole.Alert).InnerTextAsync(),
            StringComparison.Ordinal
        );
        await desk.Open("/pieces/corner-tabel");
        Assert.Contains(
            "did you mean 'corner-table'?",
            await desk.Page.GetByRole(AriaRole.Alert).InnerTextAsync(),
            StringComparison.Ordinal
        );
    }

    [Theory]
    [InlineData(Desk.Laptop, ColorScheme.Light, ColorScheme.Dark)]
    [InlineData(Desk.Phone, ColorScheme.Dark, ColorScheme.Light)]
    public async Task The_pages_of_pieces_have_no_barriers(int width, ColorScheme looked, ColorScheme other)
    {
        await using var desk = await Desk.At(Studio, chromium, width, looked);
        foreach (var (path, name) in new[] { ("/pieces", "pieces"), ("/pieces/corner-table", "piece") })
        {
            await desk.Open(path);
            Assert.Equal("", await desk.Barriers());
            Assert.Equal(0, await desk.Overflow());
            await desk.Pictures(name, width, looked, other);
        }

        Assert.Empty(desk.Faults);
    }

    private static readonly string[] Numbers = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "10"];

    private static Passagework.Exercises.Realization Played(string id) =>
        Passagework
            .Hands.Realizer.Realize(
                BuiltInPieces.Lines.Single(piece => piece.Id == id).Line,
                Passagework.Hands.Player.At(4)
            )
            .OrThrow();
}
