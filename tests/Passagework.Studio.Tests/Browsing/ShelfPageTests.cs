using Microsoft.Playwright;
using Passagework.Studio.Tests.Hosting;

namespace Passagework.Studio.Tests.Browsing;

[Collection(BrowserTests.Name)]
public sealed class ShelfPageTests(Chromium chromium, OneStudio one)
{
    private const string Own = "Your own";
    private const string Begun = "Begun, not yet on the shelf";
    private const string Library = "The starting library";

    private StudioProcess Studio => one.Studio;

    [Fact]
    public async Task Words_and_filters_leave_what_fits_and_the_address_keeps_them()
    {
        await using var desk = await Desk.At(Studio, chromium);
        await desk.Open("/exercises");
        Assert.Equal(29, await Rows(desk, Library).CountAsync());

        await desk.Page.GetByLabel("Find").FillAsync("groups five");
        await desk.Page.GetByLabel("level of the player").SelectOptionAsync("beginner");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Show" }).ClickAsync();
        Assert.Equal(1, await Rows(desk, Library).CountAsync());
        Assert.Contains("find=groups", desk.Page.Url, StringComparison.Ordinal);
        Assert.Equal(
            "/exercises/groups-of-five-down",
            await desk.Page.GetByRole(AriaRole.Link, new() { Name = "falling" }).GetAttributeAsync("href")
        );

        await desk.Open("/exercises?technique=sweep&label=Kofi");
        Assert.Equal(0, await Rows(desk, Library).CountAsync());
        Assert.Equal(
            1,
            await Rows(desk, Own).Filter(new() { HasText = "Sweeps through D minor" }).CountAsync()
        );
        await desk.Open("/exercises?find=nothing-has-this");
        Assert.Contains(
            "Nothing on the shelf",
            await desk.Page.Locator("main").InnerTextAsync(),
            StringComparison.Ordinal
        );
        await desk.Open("/exercises?technique=swepe");
        Assert.Contains(
            "did you mean 'sweep'?",
            await desk.Page.GetByRole(AriaRole.Alert).InnerTextAsync(),
            StringComparison.Ordinal
        );
        Assert.Empty(desk.Faults);
    }

    [Fact]
    public async Task A_new_one_is_begun_with_the_keyboard_thrown_away_brought_back_and_copied()
    {
        const string title = "Groups of three, rising";
        await using var desk = await Desk.At(Studio, chromium);
        await desk.Open("/exercises");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Write a new one" }).FocusAsync();
        await desk.Page.Keyboard.PressAsync("Enter");
        await desk.Page.WaitForURLAsync(url =>
            url.LastIndexOf("/exercises/", StringComparison.Ordinal)
            == url.Length - ("/exercises/".Length + 32)
        );

        await desk.Open("/exercises");
        var begun = Rows(desk, Begun).Filter(new() { HasText = title });
        Assert.Equal(1, await begun.CountAsync());
        await begun.GetByRole(AriaRole.Button, new() { Name = "Throw away" }).ClickAsync();
        Assert.Contains(
            $"‘{title}’ is thrown away",
            await desk.Page.GetByRole(AriaRole.Status).First.InnerTextAsync(),
            StringComparison.Ordinal
        );
        Assert.Equal(0, await begun.CountAsync());
        Assert.Equal("", await desk.Barriers());

        await desk
            .Page.GetByRole(AriaRole.Button, new() { Name = "Bring it back", Exact = true })
            .ClickAsync();
        await begun.GetByRole(AriaRole.Button, new() { Name = "Copy" }).ClickAsync();
        await desk.Open("/exercises");
        Assert.Equal(1, await Rows(desk, Own).Filter(new() { HasText = $"{title}, copy" }).CountAsync());
        Assert.Equal(1, await begun.CountAsync());
    }

    [Theory]
    [InlineData(Desk.Laptop, ColorScheme.Light, ColorScheme.Dark)]
    [InlineData(Desk.Phone, ColorScheme.Dark, ColorScheme.Light)]
    public async Task The_shelf_and_the_page_that_takes_music_have_no_barriers(
        int width,
        ColorScheme looked,
        ColorScheme other
    )
    {
        await using var desk = await Desk.At(Studio, chromium, width, looked);
        foreach (var (path, name) in new[] { ("/exercises", "shelf"), ("/exercises/import", "import") })
        {
            await desk.Open(path);
            Assert.Equal("", await desk.Barriers());
            Assert.Equal(0, await desk.Overflow());
            await desk.Pictures(name, width, looked, other);
        }

        Assert.Empty(desk.Faults);
    }

    [Fact]
    public async Task The_shelf_comes_within_a_tenth_of_a_second()
    {
        using var web = new HttpClient();
        var times = new List<double>();
        for (var visit = 0; visit < 25; visit++)
        {
            var clock = System.Diagnostics.Stopwatch.StartNew();
            await web.GetStringAsync(
                new Uri(Studio.Url + "/exercises"),
                TestContext.Current.CancellationToken
            );
            times.Add(clock.Elapsed.TotalMilliseconds);
        }

        // The first five warm up; a busy machine may hold up one of the others.
        var p95 = times.Skip(5).Order().ElementAt(18);
        TestContext.Current.SendDiagnosticMessage($"shelf p95 {p95:F0} ms, first {times[0]:F0} ms");
        Assert.InRange(p95, 0, 250);
    }

    private static ILocator Rows(Desk desk, string heading) =>
        desk
            .Page.Locator("section")
            .Filter(new() { Has = desk.Page.GetByRole(AriaRole.Heading, new() { Name = heading }) })
            .Locator("tbody tr");
}
