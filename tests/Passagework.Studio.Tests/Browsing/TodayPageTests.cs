using System.Diagnostics;
using Microsoft.Playwright;
using Passagework.Studio.Tests.Hosting;

namespace Passagework.Studio.Tests.Browsing;

[Collection(BrowserTests.Name)]
public sealed class TodayPageTests(Chromium chromium)
{
    // 0.6 of the 45 beats that the exercise begins at; while it plays on.
    private const string Slowed = """
        () => {
          const heard = globalThis.passageworkPlay?.player.heard();
          return heard && Math.abs(heard.sound.times.passes[0].fromBpm - 27) < 0.01;
        }
        """;

    [Fact]
    public async Task Within_a_minute_a_newcomer_has_heard_an_exercise_slowed_it_and_seen_the_move_that_limits_it()
    {
        using var studio = await StudioProcess.Start();
        var clock = Stopwatch.StartNew();
        await using var desk = await Desk.At(studio, chromium);
        await desk.Open("/");

        await Playing.Play(desk);
        await Playing.HeardUntil(desk, 1);
        await Playing
            .Field(desk, "Speed")
            .SelectOptionAsync(new SelectOptionValue { Label = "slow, 60 of 100" });
        await desk.Page.WaitForFunctionAsync(Slowed);
        await Assertions
            .Expect(desk.Page.Locator(".said"))
            .ToContainTextAsync("4:5 to 6:8, first to little finger over a skipped string");
        await Assertions
            .Expect(desk.Page.Locator("[data-score] [data-note].pw-shade"))
            .ToHaveAttributeAsync("data-note", "5");
        Assert.InRange(clock.Elapsed.TotalSeconds, 0, 60);

        var ways = desk.Page.Locator(".try li");
        Assert.Equal(3, await ways.CountAsync());
        foreach (var way in await ways.Locator("a").AllAsync())
        {
            var answer = await desk.Page.APIRequest.GetAsync(
                studio.Url + await way.GetAttributeAsync("href")
            );
            Assert.Equal(200, answer.Status);
        }

        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "I know my way" }).ClickAsync();
        await Assertions.Expect(desk.Page.Locator(".try")).ToHaveCountAsync(0);
        await desk.Page.ReloadAsync();
        Assert.Equal(0, await desk.Page.Locator(".try").CountAsync());
        Assert.Equal("", await desk.Barriers());
        await desk.Picture("today-later-1440-light");
        Assert.Empty(desk.Faults);
    }
}
