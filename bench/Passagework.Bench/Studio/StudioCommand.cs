using System.Globalization;
using Microsoft.Playwright;
using Passagework.Studio.Tests.Hosting;

namespace Passagework.Bench.Studio;

/// <summary>The studio as its user meets it: built program, real browser, real database file.</summary>
internal static class StudioCommand
{
    private const int Starts = 5;

    /// <summary>Measures and prints one line for each figure.</summary>
    public static async Task<int> Run(IReadOnlyList<string> rest)
    {
        using var playwright = await Playwright.CreateAsync();
        await using var browser = await playwright.Chromium.LaunchAsync(
            new()
            {
                ExecutablePath = rest.Count > 0 ? rest[0] : "/usr/bin/chromium",
                Args = ["--no-sandbox", "--disable-gpu", "--autoplay-policy=no-user-gesture-required"],
            }
        );
        await PrintStarts(browser);
        using var studio = await StudioProcess.Start();
        await using var context = await browser.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = 1440, Height = 900 },
            }
        );
        var page = await context.NewPageAsync();
        await PrintFirstLoad(context, page, studio.Url);
        foreach (var path in new[] { "/exercises", "/choose", "/pieces", "/settings", "/" })
            await page.GotoAsync(studio.Url + path);

        await page.WaitForTimeoutAsync(10_000);
        Print("memory, all pages seen, idle 10 s", studio.WorkingSet / 1e6, "MB", 250);
        await ChangeTimes.Print(page, studio.Url);
        await CursorFrames.Print(page, studio.Url);
        await page.GotoAsync("about:blank");
        await page.WaitForTimeoutAsync(25_000);
        Print("memory after the changes and play, idle 25 s", studio.WorkingSet / 1e6, "MB", 250);
        return 0;
    }

    /// <summary>One figure beside what it should reach.</summary>
    public static void Print(string what, double value, string unit, double? most = null) =>
        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{what, -52} {value, 8:0.#} {unit}{(most is { } limit ? $"  (at most {limit:0.#})" : "")}"
            )
        );

    /// <summary>A share of sorted values lies below what is returned.</summary>
    public static double Share(IEnumerable<double> values, double share)
    {
        double[] sorted = [.. values.Order()];
        return sorted.Length == 0
            ? double.NaN
            : sorted[Math.Min(sorted.Length - 1, (int)(share * sorted.Length))];
    }

    // The first start fills a new folder and is left out: warm is what a teacher meets each day.
    private static async Task PrintStarts(IBrowser browser)
    {
        var folder = Directory.CreateTempSubdirectory("studio-bench-").FullName;
        var seconds = new List<double>();
        for (var i = 0; i <= Starts; i++)
        {
            var page = await browser.NewPageAsync();
            var from = TimeProvider.System.GetTimestamp();
            using var studio = await StudioProcess.Start(folder);
            await page.GotoAsync(studio.Url);
            await page.Locator("[data-live=true]").First.WaitForAsync();
            if (i > 0)
                seconds.Add(TimeProvider.System.GetElapsedTime(from).TotalSeconds);
            await page.CloseAsync();
        }

        Print("start of the program to its first page, live", Share(seconds, 0.5), "s", 3);
        Directory.Delete(folder, recursive: true);
    }

    private static async Task PrintFirstLoad(IBrowserContext context, IPage page, string url)
    {
        var session = await context.NewCDPSessionAsync(page);
        var fonts = new HashSet<string>();
        double bytes = 0;
        double inFonts = 0;
        session.Event("Network.responseReceived").OnEvent += (_, seen) =>
        {
            if (seen?.GetProperty("type").GetString() == "Font")
                fonts.Add(seen.Value.GetProperty("requestId").GetString()!);
        };
        session.Event("Network.loadingFinished").OnEvent += (_, seen) =>
        {
            var size = seen!.Value.GetProperty("encodedDataLength").GetDouble();
            if (fonts.Contains(seen.Value.GetProperty("requestId").GetString()!))
                inFonts += size;
            else
                bytes += size;
        };
        await session.SendAsync("Network.enable");
        await page.GotoAsync(url);
        await page.Locator("[data-live=true]").First.WaitForAsync();
        await page.WaitForTimeoutAsync(1000);
        Print("first page over the wire, beside the fonts", bytes / 1000, "kB", 500);
        Print("its fonts", inFonts / 1000, "kB");
    }
}
