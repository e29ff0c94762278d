using Microsoft.Playwright;
using Passagework.Studio.Tests.Hosting;

namespace Passagework.Studio.Tests.Browsing;

[Collection(BrowserTests.Name)]
public sealed class SettingsPageTests(Chromium chromium, OneStudio one)
{
    [Fact]
    public async Task Settings_are_kept_over_a_restart_and_a_demo_taken_out_does_not_come_back()
    {
        using var first = await StudioProcess.Start();
        await using (var desk = await Desk.At(first, chromium))
        {
            await desk.Open("/settings");
            Assert.Equal(
                "Saltmarsh Guitar Room",
                await desk.Page.GetByLabel("Room", new() { Exact = true }).InputValueAsync()
            );
            await desk.Page.GetByLabel("Room", new() { Exact = true }).FillAsync("  ");
            await Press(desk, "Keep these");
            Assert.Contains(
                "1 to 60",
                await desk.Page.GetByRole(AriaRole.Alert).InnerTextAsync(),
                StringComparison.Ordinal
            );
            Assert.Equal("", await desk.Barriers());

            await desk.Page.GetByLabel("Room", new() { Exact = true }).FillAsync("<script>alert(1)</script>");
            await desk.Page.GetByLabel("Player", new() { Exact = true }).SelectOptionAsync("advanced");
            await desk.Page.GetByLabel("Paper and ink").SelectOptionAsync("Dark");
            await Press(desk, "Keep these");
            Assert.Equal("Kept.", await desk.Page.GetByRole(AriaRole.Status).First.InnerTextAsync());
            Assert.Equal("dark", await desk.Page.Locator("html").GetAttributeAsync("data-theme"));

            await Press(desk, "Make one now");
            Assert.Single(Directory.GetFiles(Path.Combine(first.DataFolder, "backups"), "*-studio.db"));

            await Press(desk, "Take the demo out");
            Assert.Equal(
                1,
                await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Put the demo in" }).CountAsync()
            );
            Assert.Equal("", await desk.Barriers());
            Assert.Empty(desk.Faults);
        }

        first.Kill();
        using var second = await StudioProcess.Start(first.DataFolder);
        await using (var desk = await Desk.At(second, chromium))
        {
            await desk.Open("/exercises");
            Assert.Equal("<script>alert(1)</script>", await desk.Page.Locator(".room").InnerTextAsync());
            Assert.Equal("", await desk.Page.Locator(".who").InnerTextAsync());
            Assert.Contains(
                "an advanced player",
                await desk.Page.Locator("main").InnerTextAsync(),
                StringComparison.Ordinal
            );
            Assert.Equal(
                0,
                await desk.Page.GetByRole(AriaRole.Heading, new() { Name = "Your own" }).CountAsync()
            );
            await desk.Open("/pieces");
            Assert.Contains(
                "No pieces of your own yet",
                await desk.Page.Locator("main").InnerTextAsync(),
                StringComparison.Ordinal
            );

            await desk.Open("/settings");
            await Press(desk, "Put the demo in");
            await desk.Open("/pieces");
            Assert.Equal(
                1,
                await desk.Page.GetByRole(AriaRole.Link, new() { Name = "Low Water" }).CountAsync()
            );
        }
    }

    [Fact]
    public async Task The_settings_have_no_barriers_and_lead_to_the_licences()
    {
        foreach (var (width, looked, other) in Looks)
        {
            await using var desk = await Desk.At(one.Studio, chromium, width, looked);
            await desk.Open("/settings");
            Assert.Equal("", await desk.Barriers());
            Assert.Equal(0, await desk.Overflow());
            await desk.Pictures("settings", width, looked, other);

            await desk.Page.GetByRole(AriaRole.Link, new() { Name = "Bravura" }).ClickAsync();
            Assert.Contains(
                "SIL OPEN FONT LICENSE",
                await desk.Page.Locator("body").InnerTextAsync(),
                StringComparison.OrdinalIgnoreCase
            );
            Assert.Empty(desk.Faults);
        }
    }

    [Fact]
    public async Task What_the_room_calls_things_holds_at_once_on_every_page()
    {
        using var studio = await StudioProcess.Start();
        await using var desk = await Desk.At(studio, chromium);
        await desk.Open("/settings");
        await desk.Page.GetByLabel("The box on the root").SelectOptionAsync("4");
        await desk.Page.GetByLabel("Notes", new() { Exact = true }).SelectOptionAsync("LettersWithH");
        await desk.Page.GetByLabel("Counting").SelectOptionAsync("TaKa");
        await desk.Page.GetByLabel("Sound").SelectOptionAsync("Nylon");
        await desk.Page.GetByLabel("Picking").SelectOptionAsync("Economy");
        await Press(desk, "Keep these");

        await desk.Open("/exercises/groups-of-five-up");
        await Type(desk, "notes.root", "B");
        await desk.Page.GetByText("Five neighbouring notes of the B minor pentatonic").First.WaitForAsync();
        var page = await desk.Page.Locator("main").InnerTextAsync();
        Assert.Contains("up through box 4", page, StringComparison.Ordinal);
        Assert.Contains("B minor pentatonic, box 4", page, StringComparison.Ordinal);
        Assert.Equal("Bb", await desk.Page.Locator("[data-axis='notes.root']").InputValueAsync());
        Assert.Equal("box 4", await Chosen(desk, "layout"));
        Assert.Contains("box 4, four to the beat", page, StringComparison.Ordinal);
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "The same as a table" }).ClickAsync();
        await desk.Page.Locator(".as-table tbody tr").First.WaitForAsync();
        var cells = await desk.Page.Locator(".as-table tbody tr").First.Locator("td").AllTextContentsAsync();
        Assert.Equal(("ta", "B2"), (cells[1], cells[3]));
        Assert.Equal("nylon strings", await ChosenIn(desk.Page.GetByLabel("String", new() { Exact = true })));
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "All boxes" }).ClickAsync();
        Assert.Equal(
            "box 4",
            await desk.Page.Locator(".siblings li").First.Locator("button").InnerTextAsync()
        );

        await desk.Open("/");
        Assert.Equal("box 1", await desk.Page.GetByLabel("box", new() { Exact = true }).InputValueAsync());
        Assert.Equal(
            "economy",
            await desk.Page.GetByLabel("strokes", new() { Exact = true }).InputValueAsync()
        );
        Assert.Equal("box 4", await ChosenIn(desk.Page.GetByLabel("box", new() { Exact = true })));
        await desk
            .Page.GetByLabel("root", new() { Exact = true })
            .SelectOptionAsync(new SelectOptionValue { Label = "H" });
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Write it out" }).ClickAsync();
        await desk.Live();
        Assert.Equal("B", await desk.Page.Locator("[data-axis='notes.root']").InputValueAsync());
        Assert.Empty(desk.Faults);
    }

    private static async Task Type(Desk desk, string axis, string typed)
    {
        var control = desk.Page.Locator($"[data-axis='{axis}']");
        await control.SelectOptionAsync(new SelectOptionValue { Label = "type it …" });
        var field = desk.Page.Locator($"input[data-axis='{axis}']");
        await field.FillAsync(typed);
        await field.PressAsync("Enter");
    }

    private static Task<string> Chosen(Desk desk, string axis) =>
        ChosenIn(desk.Page.Locator($"[data-axis='{axis}']"));

    private static Task<string> ChosenIn(ILocator select) =>
        select.EvaluateAsync<string>("list => list.selectedOptions[0].textContent");

    private static readonly (int Width, ColorScheme Looked, ColorScheme Other)[] Looks =
    [
        (Desk.Laptop, ColorScheme.Light, ColorScheme.Dark),
        (Desk.Phone, ColorScheme.Dark, ColorScheme.Light),
    ];

    private static Task Press(Desk desk, string button) =>
        desk.Page.GetByRole(AriaRole.Button, new() { Name = button }).ClickAsync();
}
