using Microsoft.Playwright;
using Passagework.Studio.Tests.Hosting;

namespace Passagework.Studio.Tests.Browsing;

/// <summary>What is opened, refused or narrow on a page: free of barriers, within the window, kept as pictures.</summary>
[Collection(BrowserTests.Name)]
public class StatesTests(OneStudio one, Chromium chromium)
{
    [Theory]
    [InlineData(Desk.Laptop)]
    [InlineData(Desk.Phone)]
    public async Task An_exercise_with_everything_open_has_no_barriers(int width)
    {
        await using var desk = await Desk.At(one.Studio, chromium, width);
        await desk.Open("/exercises/groups-of-five-up");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Compare" }).ClickAsync();
        await desk.Page.GetByLabel("The other exercise").SelectOptionAsync("groups-of-four-down");
        foreach (var opened in new[] { "Other fingerings", "The same as a table", "All boxes" })
            await desk.Page.GetByRole(AriaRole.Button, new() { Name = opened }).ClickAsync();
        foreach (var more in await desk.Page.Locator(".idea summary").AllAsync())
            await more.ClickAsync();
        await desk.Page.GetByRole(AriaRole.Link, new() { Name = "Open it" }).WaitForAsync();
        await desk.Page.GetByText("tops out near").First.WaitForAsync();
        await desk.Page.Locator(".siblings li").Nth(4).WaitForAsync();

        await Looked(desk, "exercise-open", width);

        await desk.Page.Locator("summary", new() { HasText = "Export" }).ClickAsync();
        await Looked(desk, "exercise-export", width);
    }

    [Theory]
    [InlineData(Desk.Laptop)]
    [InlineData(Desk.Phone)]
    public async Task A_refused_value_has_no_barriers(int width)
    {
        await using var desk = await Desk.At(one.Studio, chromium, width);
        await desk.Open("/exercises/groups-of-five-up");
        await desk
            .Page.Locator("select[data-axis='cell.offsets']")
            .SelectOptionAsync(new SelectOptionValue { Label = "type it …" });
        await desk.Page.Locator("input[data-axis='cell.offsets']").FillAsync("1 2 high");
        await desk.Page.Keyboard.PressAsync("Enter");
        await desk.Page.Locator(".axis .problem").WaitForAsync();

        await Looked(desk, "exercise-refused", width);
    }

    [Theory]
    [InlineData("/choose", "choose")]
    [InlineData("/exercises", "shelf")]
    [InlineData("/exercises/import", "import")]
    [InlineData("/pieces", "pieces")]
    [InlineData("/settings", "settings")]
    public async Task Between_laptop_and_phone_nothing_hangs_over_the_edge(string path, string name)
    {
        const int Tablet = 1024;
        await using var desk = await Desk.At(one.Studio, chromium, Tablet);
        await desk.Open(path);
        if (name == "choose")
            await desk.Page.Locator(".ranked").WaitForAsync();

        await desk.Pictures(name, Tablet, ColorScheme.Light, ColorScheme.Dark);
        Assert.Equal(0, await desk.Overflow());
        Assert.Empty(desk.Faults);
    }

    private static async Task Looked(Desk desk, string name, int width)
    {
        Assert.Equal("", await desk.Barriers());
        Assert.Equal(0, await desk.Overflow());
        await desk.Pictures(name, width, ColorScheme.Light, ColorScheme.Dark);
        Assert.Empty(desk.Faults);
    }
}
