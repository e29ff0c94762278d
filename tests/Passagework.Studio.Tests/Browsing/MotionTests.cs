using System.Text.Json;
using Microsoft.Playwright;
using Passagework.Studio.Tests.Hosting;

namespace Passagework.Studio.Tests.Browsing;

/// <summary>Whoever asks the system for less motion gets less.</summary>
[Collection(BrowserTests.Name)]
public sealed class MotionTests(Chromium chromium, OneStudio one)
{
    // Where the line stands in each of sixty frames, by the note it is at; and how the page is told to follow.
    private const string Watching = """
        async () => {
          const places = {};
          const cursor = document.querySelector(".play-cursor");
          for (let frame = 0; frame < 60; frame++) {
            await new Promise(requestAnimationFrame);
            const at = cursor.dataset.at;
            if (!cursor.hidden) (places[at] ??= new Set()).add(cursor.style.transform);
          }
          return Object.values(places).map((all) => all.size);
        }
        """;

    private const string Following = """
        window.followed = [];
        window.scrollBy = (how) => window.followed.push(how.behavior);
        """;

    [Theory]
    [InlineData(ReducedMotion.NoPreference, "smooth")]
    [InlineData(ReducedMotion.Reduce, "auto")]
    public async Task The_line_glides_and_the_page_follows_only_where_motion_is_welcome(
        ReducedMotion wanted,
        string behavior
    )
    {
        await using var desk = await Desk.At(one.Studio, chromium, Desk.Phone);
        await desk.Page.EmulateMediaAsync(new() { ReducedMotion = wanted });
        await desk.Page.AddInitScriptAsync(Following);
        await desk.Open("/exercises/groups-of-five-up");
        await desk.Page.GetByText("More", new() { Exact = true }).ClickAsync();
        await Playing.Field(desk, "Count-in").SelectOptionAsync("none");
        await Playing.Tempo(desk, "100");
        await desk.Page.Locator("[data-follow] svg").First.EvaluateAsync("one => one.scrollIntoView()");
        await Playing.Play(desk);
        await Playing.HeardUntil(desk, 0.2);

        var steps = (await desk.Page.EvaluateAsync<JsonElement>(Watching))
            .EnumerateArray()
            .Select(count => count.GetInt32())
            .ToList();
        await desk.Page.WaitForFunctionAsync("() => window.followed.length > 0");

        if (wanted == ReducedMotion.Reduce)
            Assert.All(steps, count => Assert.Equal(1, count));
        else
            Assert.Contains(steps, count => count >= 3);
        Assert.Equal(
            [behavior],
            (await desk.Page.EvaluateAsync<string[]>("() => window.followed")).Distinct()
        );
        Assert.Empty(desk.Faults);
    }

    [Fact]
    public async Task Nothing_on_any_page_moves_by_itself_for_who_wants_less_motion()
    {
        await using var desk = await Desk.At(one.Studio, chromium);
        await desk.Page.EmulateMediaAsync(new() { ReducedMotion = ReducedMotion.Reduce });
        foreach (
            var path in new[]
            {
                "/",
                "/exercises",
                "/exercises/groups-of-five-up",
                "/choose",
                "/pieces",
                "/settings",
            }
        )
        {
            await desk.Open(path);
            Assert.Empty(
                await desk.Page.EvaluateAsync<string[]>(
                    """
                    () => [...document.querySelectorAll("*")]
                      .filter((one) => {
                        const style = getComputedStyle(one);
                        const lasts = (times) => times.split(", ").some((time) => parseFloat(time) > 0);
                        return lasts(style.transitionDuration) || (style.animationName !== "none" && lasts(style.animationDuration))
                          || style.scrollBehavior === "smooth";
                      })
                      .map((one) => one.outerHTML.slice(0, 80))
                    """
                )
            );
        }
    }
}
