using Microsoft.Playwright;
using Passagework.Studio.Tests.Hosting;

namespace Passagework.Studio.Tests.Browsing;

/// <summary>What a finger does on the score.</summary>
[Collection(BrowserTests.Name)]
public sealed class TouchTests(Chromium chromium, OneStudio one)
{
    private const int Tablet = 1024;

    [Fact]
    public async Task A_finger_drawn_over_bars_loops_them_and_one_drawn_down_moves_the_page_alone()
    {
        await using var desk = await AtTheScore(Tablet);
        await Playing.Tempo(desk, "240");
        await Centre(desk, 20);
        var (from, to) = (await Note(desk, 20), await Note(desk, 2));
        var scrolled = await desk.Page.EvaluateAsync<float>("scrollY");

        await Draw(desk, from, (to.X, from.Y));
        await Assertions.Expect(desk.Page.GetByLabel("To bar")).ToHaveValueAsync("2");
        await Assertions.Expect(desk.Page.GetByLabel("From bar")).ToHaveValueAsync("1");
        await Assertions.Expect(desk.Page.Locator(".play-loop").First).ToBeVisibleAsync();
        Assert.Equal(scrolled, await desk.Page.EvaluateAsync<float>("scrollY"));

        await Draw(desk, from, (from.X - 10, from.Y - 200));
        await desk.Page.WaitForFunctionAsync($"() => scrollY > {scrolled} + 50");
        await Assertions.Expect(desk.Page.GetByLabel("To bar")).ToHaveValueAsync("2");
        await Assertions.Expect(desk.Page.Locator(".play-loop")).ToHaveCountAsync(1);
        await Assertions.Expect(desk.Page.Locator(".play-loop.drawn")).ToHaveCountAsync(0);
        Assert.Empty(desk.Faults);
    }

    [Fact]
    public async Task A_tap_explains_a_note_and_loops_nothing()
    {
        await using var desk = await AtTheScore(Desk.Phone);
        await Centre(desk, 3);
        var note = await Note(desk, 3);

        await desk.Page.Touchscreen.TapAsync(note.X, note.Y);

        await Assertions.Expect(desk.Page.Locator(".side").First).ToContainTextAsync("5:5 to 5:7");
        await Assertions.Expect(desk.Page.Locator(".play-loop")).ToHaveCountAsync(0);
        Assert.Empty(desk.Faults);
    }

    // Real touches of the browser, so that it decides itself which way of a finger moves the page.
    private static async Task Draw(Desk desk, (float X, float Y) from, (float X, float Y) to)
    {
        const int Steps = 8;
        var browser = await desk.Page.Context.NewCDPSessionAsync(desk.Page);
        await Touch(browser, "touchStart", from);
        for (var step = 1; step <= Steps; step++)
        {
            var share = step / (float)Steps;
            await Touch(
                browser,
                "touchMove",
                (from.X + (share * (to.X - from.X)), from.Y + (share * (to.Y - from.Y)))
            );
        }

        await Touch(browser, "touchEnd");
    }

    private static Task Touch(ICDPSession browser, string type, params (float X, float Y)[] fingers) =>
        browser.SendAsync(
            "Input.dispatchTouchEvent",
            new()
            {
                ["type"] = type,
                ["touchPoints"] = fingers.Select(finger => new { x = finger.X, y = finger.Y }).ToArray(),
            }
        );

    // The second picture is drawn for the width that the first was told.
    private async Task<Desk> AtTheScore(int width)
    {
        var desk = await Desk.At(one.Studio, chromium, width, hasTouch: true);
        await desk.Open("/exercises/groups-of-five-up");
        await desk.Page.WaitForFunctionAsync("() => document.cookie.includes('width=')");
        await desk.Open("/exercises/groups-of-five-up");
        return desk;
    }

    private static ILocator Mark(Desk desk, int note) =>
        desk.Page.Locator($"[data-follow] [data-note='{note}']").First;

    private static Task Centre(Desk desk, int note) =>
        Mark(desk, note).EvaluateAsync("mark => mark.scrollIntoView({ block: 'center' })");

    private static async Task<(float X, float Y)> Note(Desk desk, int note)
    {
        var box = (await Mark(desk, note).BoundingBoxAsync())!;
        return (box.X + (box.Width / 2), box.Y + (box.Height / 2));
    }
}
