using Microsoft.Playwright;

namespace Passagework.Bench.Studio;

/// <summary>From the press of a key to the picture that answers it, as painted.</summary>
internal static class ChangeTimes
{
    private const int Changes = 100;

    // 84 notes played three times, four to the beat: fifteen bars and three beats.
    private static readonly (string Axis, string Key)[] Sixteen =
    [
        ("movement.repeat", "ArrowRight"),
        ("movement.repeat", "ArrowRight"),
        ("rhythm.notesPerBeat", "ArrowLeft"),
        ("rhythm.notesPerBeat", "ArrowLeft"),
    ];

    // The key's own time is where counting begins. A frame after the score has changed the picture is on the screen.
    private const string Watch = """
        () => {
          window.answers = [];
          let from = 0;
          addEventListener("keydown", (event) => { from = event.timeStamp; }, true);
          new MutationObserver((changes) => {
            if (!from || !changes.some((change) => change.target.nodeType === 1 && change.target.closest("[data-score]"))) return;
            const pressed = from;
            from = 0;
            requestAnimationFrame(() => setTimeout(() => window.answers.push(performance.now() - pressed), 0));
          }).observe(document.body, { childList: true, subtree: true, attributes: true });
        }
        """;

    // A step at the end of its values, or one that is refused, brings no picture: a second of silence says so.
    private const string Answer = """
        () => new Promise((resolve) => {
          const end = performance.now() + 1000;
          const look = () => {
            if (window.answers.length > 0) resolve(window.answers[0]);
            else if (performance.now() > end) resolve(null);
            else setTimeout(look, 5);
          };
          look();
        })
        """;

    /// <summary>Sixteen bars; every axis is stepped on and back until a hundred pictures have come.</summary>
    public static async Task Print(IPage page, string url)
    {
        await page.GotoAsync($"{url}/exercises/groups-of-six-up-and-down");
        await page.Locator("[data-live=true]").First.WaitForAsync();
        await page.EvaluateAsync(
            "document.querySelectorAll('.idea details').forEach((one) => { one.open = true; })"
        );
        await page.EvaluateAsync(Watch);
        foreach (var (axis, key) in Sixteen)
            await Press(page, axis, key);

        var bars = await page.Locator("[data-score] .system").Last.GetAttributeAsync("data-last");
        Console.WriteLine($"changes of an exercise of {bars} bars:");
        var times = await Axes(page);
        var all = times.SelectMany(one => one.Value).ToList();
        StudioCommand.Print(
            $"{all.Count} changes over {times.Count} axes, median",
            StudioCommand.Share(all, 0.5),
            "ms"
        );
        StudioCommand.Print("  95 of 100 within", StudioCommand.Share(all, 0.95), "ms", 100);
        StudioCommand.Print("  slowest", all.Max(), "ms");
        foreach (var (axis, took) in times.OrderByDescending(one => one.Value.Max()).Take(5))
            StudioCommand.Print($"  {axis}, slowest", took.Max(), "ms");

        await page.Locator("[data-score]").FocusAsync();
        var notes = await Many(page, "ArrowRight", 50);
        StudioCommand.Print("50 notes chosen, 95 of 100 within", StudioCommand.Share(notes, 0.95), "ms", 100);
    }

    private static async Task<Dictionary<string, List<double>>> Axes(IPage page)
    {
        var names = await page.EvaluateAsync<string[]>(
            "[...document.querySelectorAll('.idea select[data-axis]')].map((one) => one.dataset.axis)"
        );
        var times = new Dictionary<string, List<double>>();
        for (var round = 0; times.Values.Sum(one => one.Count) < Changes && round < 10; round++)
        {
            foreach (var name in names)
            {
                foreach (
                    var key in round % 2 == 0
                        ? ["ArrowRight", "ArrowLeft"]
                        : new[] { "ArrowLeft", "ArrowRight" }
                )
                {
                    if (await Press(page, name, key) is { } took)
                        (times.TryGetValue(name, out var list) ? list : times[name] = []).Add(took);
                }
            }
        }

        return times;
    }

    private static async Task<double?> Press(IPage page, string axis, string key)
    {
        var control = page.Locator($".idea select[data-axis='{axis}']");
        if (await control.CountAsync() == 0)
            return null;

        await control.FocusAsync();
        var took = await Many(page, key, 1);
        // What follows the picture, such as easier and harder forms, is let finish: a teacher's next key comes later too.
        await page.WaitForTimeoutAsync(250);
        return took.Count > 0 ? took[0] : null;
    }

    private static async Task<List<double>> Many(IPage page, string key, int count)
    {
        var times = new List<double>();
        for (var i = 0; i < count; i++)
        {
            await page.EvaluateAsync("window.answers.length = 0");
            await page.Keyboard.PressAsync(key);
            if (await page.EvaluateAsync<double?>(Answer) is { } took)
                times.Add(took);
        }

        return times;
    }
}
