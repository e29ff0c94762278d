using Microsoft.Playwright;

namespace Passagework.Bench.Studio;

/// <summary>Whether the cursor moves with every frame of the browser while an exercise sounds.</summary>
internal static class CursorFrames
{
    private const string Count = """
        () => new Promise((resolve) => {
          const at = [];
          const cursor = document.querySelector("[data-score] .play-cursor");
          const from = performance.now();
          const step = (now) => {
            const box = cursor.getBoundingClientRect();
            at.push([now, box.x, box.y]);
            if (now - from < 5000) requestAnimationFrame(step);
            else resolve(at.flat());
          };
          requestAnimationFrame(step);
        })
        """;

    /// <summary>Five seconds of play: frames a second, and those in which the cursor stood elsewhere than before.</summary>
    public static async Task Print(IPage page, string url)
    {
        await page.GotoAsync($"{url}/exercises/groups-of-five-up");
        await page.Locator("[data-live=true]").First.WaitForAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Play", Exact = true }).ClickAsync();
        await page.Locator("[data-score] .play-cursor")
            .First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        await page.WaitForTimeoutAsync(6000);
        var seen = await page.EvaluateAsync<double[]>(Count);
        var frames = seen.Chunk(3).ToList();
        var moved = frames
            .Zip(frames.Skip(1))
            .Count(pair => pair.First[1] != pair.Second[1] || pair.First[2] != pair.Second[2]);
        var seconds = (frames[^1][0] - frames[0][0]) / 1000;
        StudioCommand.Print("frames a second while playing", (frames.Count - 1) / seconds, "");
        StudioCommand.Print("  in which the cursor moved, of 100", 100.0 * moved / (frames.Count - 1), "");
        var gaps = frames.Zip(frames.Skip(1)).Select(pair => pair.Second[0] - pair.First[0]);
        StudioCommand.Print("  longest time between two frames", gaps.Max(), "ms");
    }
}
