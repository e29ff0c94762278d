using System.Text.Json;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using Passagework.Studio.Tests.Hosting;
using Passagework.Tests.Architecture;

namespace Passagework.Studio.Tests.Browsing;

/// <summary>One user before one studio: a page of the browser, watched for faults.</summary>
internal sealed class Desk : IAsyncDisposable
{
    /// <summary>Width of a laptop's window.</summary>
    public const int Laptop = 1440;

    /// <summary>Width of a phone.</summary>
    public const int Phone = 390;

    private readonly IBrowserContext _context;
    private readonly List<string> _faults = [];

    private Desk(StudioProcess studio, IBrowserContext context, IPage page)
    {
        Studio = studio;
        _context = context;
        Page = page;
        page.PageError += (_, error) => _faults.Add(error);
        page.Console += (_, message) =>
        {
            if (message.Type == "error")
                _faults.Add(message.Text);
        };
    }

    /// <summary>The studio.</summary>
    public StudioProcess Studio { get; }

    /// <summary>The page.</summary>
    public IPage Page { get; }

    /// <summary>Errors of scripts and requests so far.</summary>
    public IReadOnlyList<string> Faults => _faults;

    /// <summary>Sits down at a studio.</summary>
    public static async Task<Desk> At(
        StudioProcess studio,
        Chromium chromium,
        int width = Laptop,
        ColorScheme scheme = ColorScheme.Light,
        bool hasTouch = false
    )
    {
        var context = await chromium.Browser.NewContextAsync(
            new()
            {
                ViewportSize = new() { Width = width, Height = width == Phone ? 844 : 900 },
                ColorScheme = scheme,
                HasTouch = hasTouch,
                AcceptDownloads = true,
            }
        );
        return new Desk(studio, context, await context.NewPageAsync());
    }

    /// <summary>Opens a page of the studio and waits until it answers.</summary>
    public async Task Open(string path)
    {
        await Page.GotoAsync(Studio.Url + path);
        await Live();
    }

    /// <summary>Waits until a live page is connected: such a page marks itself when it is.</summary>
    public async Task Live()
    {
        if (await Page.Locator("[data-live]").CountAsync() > 0)
        {
            await Page.Locator("[data-live=true]")
                .First.WaitForAsync(new() { State = WaitForSelectorState.Attached });
        }
    }

    /// <summary>Another page of the same user.</summary>
    public async Task<IPage> SecondPage() => await _context.NewPageAsync();

    /// <summary>Keeps a picture of the whole page in the output folder.</summary>
    public async Task Picture(string name)
    {
        var folder = Path.Combine(Repository.Root, "artifacts", "screens");
        Directory.CreateDirectory(folder);
        await Page.EvaluateAsync("document.fonts.ready");
        await Page.ScreenshotAsync(
            new()
            {
                Path = Path.Combine(folder, name + ".png"),
                FullPage = true,
                // At rest, where it covers nothing of a picture that is higher than the window.
                Style = ".play { position: static !important; }",
            }
        );
    }

    /// <summary>Keeps pictures of the whole page in light and dark, named after the width and the scheme.</summary>
    public async Task Pictures(string name, int width, params ColorScheme[] schemes)
    {
        foreach (var scheme in schemes)
        {
            await Page.EmulateMediaAsync(new() { ColorScheme = scheme });
            await Picture($"{name}-{width}-{(scheme == ColorScheme.Dark ? "dark" : "light")}");
        }

        await Page.EmulateMediaAsync(new() { ColorScheme = schemes[0] });
    }

    /// <summary>Presses a key, once or some times.</summary>
    public async Task Press(string key, int times = 1)
    {
        for (var time = 0; time < times; time++)
            await Page.Keyboard.PressAsync(key);
    }

    /// <summary>Pixels by which the page is wider than the window.</summary>
    public Task<int> Overflow() =>
        Page.EvaluateAsync<int>("Math.max(0, document.documentElement.scrollWidth - innerWidth)");

    /// <summary>What axe finds against WCAG 2.2 AA, in words; empty when nothing.</summary>
    public async Task<string> Barriers(IPage? page = null)
    {
        // As its user has it: before styles and typefaces are there a page has other sizes.
        await (page ?? Page).WaitForLoadStateAsync();
        await (page ?? Page).EvaluateAsync("document.fonts.ready");
        var result = await (page ?? Page).RunAxe(
            new AxeRunOptions
            {
                RunOnly = new RunOnlyOptions
                {
                    Type = "tag",
                    Values = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"],
                },
            }
        );
        return string.Join(
            "\n",
            result.Violations.Select(one =>
                $"{one.Id}: {one.Help} — {string.Join(" | ", one.Nodes.Take(5).Select(node => JsonSerializer.Serialize(node.Html)))}"
            )
        );
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync() => await _context.DisposeAsync();
}
