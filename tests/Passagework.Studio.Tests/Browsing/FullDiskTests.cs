using Microsoft.Playwright;
using Passagework.Studio.Tests.Hosting;

namespace Passagework.Studio.Tests.Browsing;

/// <summary>What a user sees while the disk takes nothing more, and after room was made.</summary>
[Collection(BrowserTests.Name)]
public sealed class FullDiskTests(Chromium chromium, OneStudio one) : IClassFixture<OneStudio>, IAsyncLifetime
{
    private const string NotKept = "The change is not kept: the disk takes no more";
    private readonly StudioProcess _studio = one.Studio;

    public async ValueTask InitializeAsync() => await _studio.FreeDisk();

    public ValueTask DisposeAsync() => ValueTask.CompletedTask;

    [Fact]
    public async Task A_change_stays_shown_and_is_kept_once_there_is_room()
    {
        await using var desk = await Desk.At(_studio, chromium);
        await desk.Open("/exercises/groups-of-five-up");
        var first = await desk.Page.Locator(".lede").First.InnerTextAsync();
        await _studio.FillDisk();

        await Root(desk, "G");
        await Said(desk);
        await Root(desk, "E");
        await Said(desk);
        await Assertions.Expect(desk.Page.Locator(".lede").First).ToContainTextAsync("E minor pentatonic");
        Assert.Equal("", await desk.Barriers());
        await desk.Picture("exercise-full-disk-1440-light");
        await Button(desk, "Try again").ClickAsync();
        await Said(desk);

        await _studio.FreeDisk();
        await Button(desk, "Try again").ClickAsync();
        await desk.Page.WaitForURLAsync(url => url.Split('/')[^1].Length == 32);
        await Assertions.Expect(desk.Page.Locator("[role=alert]")).ToHaveCountAsync(0);
        await desk.Page.ReloadAsync();
        await desk.Live();
        Assert.Contains(
            "E minor pentatonic",
            await desk.Page.Locator(".lede").First.InnerTextAsync(),
            StringComparison.Ordinal
        );

        // Back to what the library has, not to what was only shown.
        await Undo(desk).ClickAsync();
        await Assertions.Expect(desk.Page.Locator(".lede").First).ToHaveTextAsync(first);
        await Quiet(desk);
    }

    [Fact]
    public async Task What_is_beside_the_idea_is_said_too_and_can_be_tried_again()
    {
        await using var desk = await Desk.At(_studio, chromium);
        await desk.Open("/exercises/groups-of-five-up");
        await Root(desk, "G");
        await desk.Page.WaitForURLAsync(url => url.Split('/')[^1].Length == 32);
        await _studio.FillDisk();

        await Button(desk, "Copy").ClickAsync();
        await Said(desk);
        await Button(desk, "Put on the shelf").ClickAsync();
        await Said(desk);
        await Undo(desk).ClickAsync();
        await Answered(desk);
        await Said(desk);
        await Assertions.Expect(desk.Page.Locator(".lede").First).ToContainTextAsync("G minor pentatonic");

        await _studio.FreeDisk();
        await Button(desk, "Try again").ClickAsync();
        await Assertions.Expect(desk.Page.Locator(".lede").First).ToContainTextAsync("A minor pentatonic");
        await _studio.FillDisk();
        var notes = desk.Page.Locator("textarea").First;
        await notes.FillAsync("Slowly at first");
        await notes.BlurAsync();
        await Said(desk);
        Assert.Equal("Slowly at first", await notes.InputValueAsync());

        await _studio.FreeDisk();
        await Button(desk, "Try again").ClickAsync();
        await Assertions.Expect(desk.Page.Locator("[role=alert]")).ToHaveCountAsync(0);
        await desk.Page.ReloadAsync();
        await Assertions.Expect(desk.Page.Locator("textarea").First).ToHaveValueAsync("Slowly at first");
        await Quiet(desk);
    }

    [Theory]
    [InlineData("/exercises", "Write a new one")]
    [InlineData("/exercises", "Throw away")]
    [InlineData("/pieces/import", "Look it through")]
    [InlineData("/exercises/import", "Write it out")]
    [InlineData("/settings", "Keep these")]
    [InlineData("/settings", "Take the demo out")]
    [InlineData("/", "I know my way")]
    [InlineData("/", "Write it out")]
    public async Task Every_form_says_that_nothing_was_kept(string page, string button)
    {
        await using var desk = await Desk.At(_studio, chromium);
        await desk.Open(page);
        var text = desk.Page.Locator("textarea, #room");
        var fields = await text.CountAsync();
        if (fields > 0)
            await text.First.FillAsync(page == "/settings" ? "Salt room" : OneLine);

        await _studio.FillDisk();
        await Button(desk, button).EvaluateAsync("button => button.click()");
        await Said(desk);

        if (fields > 0 && button != "Take the demo out")
            Assert.Equal(page == "/settings" ? "Salt room" : OneLine, await text.First.InputValueAsync());
        await Quiet(desk);
    }

    [Fact]
    public async Task A_decision_and_a_copy_are_refused_in_words_and_leave_nothing_half_done()
    {
        await using var desk = await Desk.At(_studio, chromium);
        await desk.Open("/choose");
        var keep = Button(desk, "Keep this decision");
        await keep.WaitForAsync();
        await _studio.FillDisk();
        await keep.ClickAsync();
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Keep it", Exact = true }).ClickAsync();
        await Said(desk);

        await desk.Open("/settings");
        await Button(desk, "Make one now").ClickAsync();
        await Assertions
            .Expect(desk.Page.Locator("[role=alert]"))
            .ToContainTextAsync("No copy could be taken: the disk takes no more");
        Assert.DoesNotContain(
            Directory.GetFiles(Path.Combine(_studio.DataFolder, "backups")),
            file => file.EndsWith(".part", StringComparison.Ordinal)
        );

        await _studio.FreeDisk();
        await Button(desk, "Make one now").ClickAsync();
        await Assertions
            .Expect(desk.Page.GetByRole(AriaRole.Status).Filter(new() { HasText = "The copy is made" }))
            .ToBeVisibleAsync();
        await Quiet(desk);
    }

    private const string OneLine = "e|-0-1-3-|\nB|-------|\nG|-------|\nD|-------|\nA|-------|\nE|-------|";

    private static ILocator Button(Desk desk, string name) =>
        desk.Page.GetByRole(AriaRole.Button, new() { Name = name }).First;

    private static ILocator Undo(Desk desk) => Button(desk, "Undo");

    private static Task Root(Desk desk, string root) =>
        desk.Page.Locator("select[data-axis='notes.root']").SelectOptionAsync(root);

    // What was pressed before this is done: a page answers in order, and the words of an earlier refusal stand there still.
    private static async Task Answered(Desk desk)
    {
        await Button(desk, "Larger score").ClickAsync();
        await Button(desk, "Usual size").WaitForAsync();
    }

    private static async Task Said(Desk desk)
    {
        var alert = desk.Page.Locator("[role=alert]:visible").First;
        await Assertions.Expect(alert).ToContainTextAsync(NotKept, new() { IgnoreCase = true });
        await Assertions.Expect(alert).ToContainTextAsync("free some space", new() { IgnoreCase = true });
    }

    // No script failed, and the window in which the studio runs shows no trace of the program.
    private async Task Quiet(Desk desk)
    {
        Assert.Empty(desk.Faults);
        Assert.DoesNotContain("   at ", _studio.Errors, StringComparison.Ordinal);
        using var web = new HttpClient();
        Assert.Equal(
            System.Net.HttpStatusCode.OK,
            (
                await web.GetAsync(new Uri(_studio.Url + "/alive"), TestContext.Current.CancellationToken)
            ).StatusCode
        );
    }
}
