using Passagework.Studio.Tests.Hosting;

namespace Passagework.Studio.Tests.Browsing;

[Collection(BrowserTests.Name)]
public sealed class FrameTests(Chromium chromium, OneStudio one)
{
    private readonly StudioProcess _studio = one.Studio;

    [Fact]
    public async Task The_head_names_the_pages_and_every_one_of_them_opens()
    {
        await using var desk = await Desk.At(_studio, chromium);
        await desk.Open("/");
        var links = desk.Page.Locator("nav[aria-label=Pages] a");
        var names = await links.AllTextContentsAsync();

        foreach (var name in names)
        {
            await links.GetByText(name, new() { Exact = true }).ClickAsync();
            Assert.Equal(1, await desk.Page.Locator("h1").CountAsync());
            Assert.Equal(
                "page",
                await links.GetByText(name, new() { Exact = true }).GetAttributeAsync("aria-current")
            );
        }

        Assert.Equal(["Today", "Exercises", "Choose", "Pieces", "Settings"], names);
        Assert.Empty(desk.Faults);
    }

    [Fact]
    public async Task On_a_phone_the_pages_open_under_one_word()
    {
        await using var desk = await Desk.At(_studio, chromium, Desk.Phone);
        await desk.Open("/");
        await desk.Page.GetByText("Contents", new() { Exact = true }).ClickAsync();
        await desk.Page.Locator("nav[aria-label=Contents]").GetByText("Pieces").ClickAsync();

        Assert.EndsWith("/pieces", desk.Page.Url, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/nowhere", "Nothing here")]
    [InlineData("/exercises/nowhere", "No such exercise")]
    [InlineData("/pieces/nowhere", "No such piece")]
    [InlineData("/fault", "This page could not be made")]
    public async Task An_address_that_leads_nowhere_says_so(string path, string head)
    {
        await using var desk = await Desk.At(_studio, chromium);
        await desk.Page.GotoAsync(_studio.Url + path);

        Assert.Equal(head, await desk.Page.Locator("h1").InnerTextAsync());
        await desk.Page.Locator("nav[aria-label=Pages]").GetByText("Pieces").WaitForAsync();
        Assert.Equal("", await desk.Barriers());
    }

    [Fact]
    public async Task A_page_that_names_no_icon_has_one()
    {
        using var web = new HttpClient();
        using var icon = await web.GetAsync(
            new Uri(_studio.Url + "/favicon.ico"),
            TestContext.Current.CancellationToken
        );

        Assert.Equal("image/svg+xml", icon.Content.Headers.ContentType?.MediaType);
        Assert.Equal(System.Net.HttpStatusCode.OK, icon.StatusCode);
    }

    [Fact]
    public async Task The_first_load_is_small_beside_the_typefaces()
    {
        await using var desk = await Desk.At(_studio, chromium);
        var bytes = 0L;
        desk.Page.RequestFinished += async (_, request) =>
        {
            if (!request.Url.Contains("/fonts/", StringComparison.Ordinal))
                bytes += (await request.SizesAsync()).ResponseBodySize;
        };
        await desk.Open("/");
        await desk.Page.WaitForLoadStateAsync(Microsoft.Playwright.LoadState.NetworkIdle);

        Assert.InRange(bytes, 1, 500_000);
    }
}
