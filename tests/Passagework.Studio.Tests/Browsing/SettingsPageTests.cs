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
            await desk.Page.GetByLabel("Pages begin with").SelectOptionAsync("advanced");
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

    private static readonly (int Width, ColorScheme Looked, ColorScheme Other)[] Looks =
    [
        (Desk.Laptop, ColorScheme.Light, ColorScheme.Dark),
        (Desk.Phone, ColorScheme.Dark, ColorScheme.Light),
    ];

    private static Task Press(Desk desk, string button) =>
        desk.Page.GetByRole(AriaRole.Button, new() { Name = button }).ClickAsync();
}
