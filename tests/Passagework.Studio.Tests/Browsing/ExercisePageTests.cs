using System.Diagnostics;
using System.Globalization;
using Microsoft.Playwright;
using Passagework.Studio.Tests.Hosting;

namespace Passagework.Studio.Tests.Browsing;

[Collection(BrowserTests.Name)]
public sealed class ExercisePageTests(Chromium chromium, OneStudio one, ITestOutputHelper output)
{
    private readonly StudioProcess _studio = one.Studio;

    [Fact]
    public async Task An_exercise_is_made_from_nothing_changed_undone_to_the_start_and_kept()
    {
        await using var desk = await Desk.At(_studio, chromium);
        await desk.Open("/");
        await desk.Page.GetByLabel("figure").SelectOptionAsync("groups-of-four");
        await desk.Page.GetByLabel("direction").SelectOptionAsync("down");
        await desk.Page.GetByLabel("root").SelectOptionAsync("E");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Write it out" }).ClickAsync();
        await desk.Page.WaitForURLAsync("**/exercises/*");
        await desk.Live();
        Assert.Contains("E minor pentatonic", await Sentence(desk), StringComparison.Ordinal);
        var first = await Sentence(desk);

        await Choose(desk, "movement.step", "2");
        await Choose(desk, "notes.root", "G");
        await Assertions.Expect(desk.Page.Locator(".lede")).ToContainTextAsync("G minor pentatonic");
        await Undo(desk).ClickAsync();
        await Undo(desk).ClickAsync();
        await Assertions.Expect(desk.Page.Locator(".lede")).ToHaveTextAsync(first);
        await Assertions.Expect(Undo(desk)).ToBeDisabledAsync();

        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Put on the shelf" }).ClickAsync();
        await Assertions
            .Expect(desk.Page.GetByRole(AriaRole.Button, new() { Name = "Put on the shelf" }))
            .ToHaveCountAsync(0);
        await desk.Page.ReloadAsync();
        Assert.Equal(first, await Sentence(desk));
        Assert.Empty(desk.Faults);
    }

    [Fact]
    public async Task Every_axis_that_lists_values_can_be_stepped_and_the_picture_follows_within_the_time_of_a_blink()
    {
        await using var desk = await Desk.At(_studio, chromium);
        await desk.Open("/exercises/groups-of-five-up-and-down");
        var axes = await desk
            .Page.Locator("select[data-axis]")
            .EvaluateAllAsync<string[]>("all => all.map(one => one.dataset.axis)");
        Assert.InRange(axes.Length, 10, 60);
        await desk.Page.EvaluateAsync(
            "document.querySelectorAll('details.more').forEach(one => one.open = true)"
        );

        var times = new List<double>();
        foreach (var axis in axes)
            times.AddRange(await Stepped(desk, axis));

        times.Sort();
        var p95 = times[(int)(times.Count * 0.95)];
        output.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{times.Count} changes: p50 {times[times.Count / 2]:F0}, p95 {p95:F0} ms"
            )
        );
        Assert.InRange(times.Count, 15, 200);
        // The target is 100 ms on a quiet machine, which the benchmark measures; here other tests run beside it.
        Assert.InRange(p95, 0, 1500);
        Assert.Empty(desk.Faults);
    }

    [Fact]
    public async Task A_note_explains_itself_and_its_finger_can_be_fixed_and_freed()
    {
        await using var desk = await Desk.At(_studio, chromium);
        await desk.Open("/exercises/groups-of-five-up");
        await Assertions.Expect(desk.Page.Locator(".side").First).ToContainTextAsync("4:5 to 6:8");

        await desk.Page.Locator("[data-score] [data-note='3']").First.ClickAsync();
        await Assertions.Expect(desk.Page.Locator(".side").First).ToContainTextAsync("5:5 to 5:7");
        await desk.Page.Locator("[data-score]").FocusAsync();
        await desk.Page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(desk.Page.Locator(".side").First).ToContainTextAsync("5:7 to 4:5");
        await desk.Page.Keyboard.PressAsync("f");
        await Assertions.Expect(desk.Page.Locator(".side").First).ToContainTextAsync("Fixed: finger");
        await desk.Page.WaitForURLAsync(url => url.Split('/')[^1].Length == 32);

        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Other fingerings" }).ClickAsync();
        await Assertions.Expect(desk.Page.Locator(".others li").First).ToBeVisibleAsync();
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Free it" }).ClickAsync();
        await Assertions.Expect(desk.Page.Locator(".side").First).Not.ToContainTextAsync("Fixed");
        Assert.Empty(desk.Faults);
    }

    [Fact]
    public async Task What_cannot_be_is_said_beside_the_control_and_the_last_picture_stays()
    {
        await using var desk = await Desk.At(_studio, chromium);
        await desk.Open("/exercises/groups-of-five-up");
        var before = await desk.Page.Locator("[data-score] .system").First.InnerHTMLAsync();

        await desk
            .Page.Locator("select[data-axis='cell.offsets']")
            .SelectOptionAsync(new SelectOptionValue { Label = "type it …" });
        var field = desk.Page.Locator("input[data-axis='cell.offsets']");
        await field.FillAsync("1 2 <b>x</b>");
        await field.PressAsync("Enter");

        await Assertions.Expect(desk.Page.Locator(".axis .problem")).ToContainTextAsync("<b>x</b>");
        await Assertions
            .Expect(desk.Page.Locator("[data-score] > .caption"))
            .ToHaveTextAsync("Before the change:");
        Assert.Equal("1 2 <b>x</b>", await field.InputValueAsync());
        Assert.Equal(before, await desk.Page.Locator("[data-score] .system").First.InnerHTMLAsync());

        await field.FillAsync("1 2 4 2");
        await field.PressAsync("Enter");
        await Assertions.Expect(desk.Page.Locator(".problem")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task The_second_of_two_pages_is_told_and_can_keep_both()
    {
        await using var desk = await Desk.At(_studio, chromium);
        await desk.Open("/exercises/groups-of-five-up");
        await Choose(desk, "movement.step", "2");
        await desk.Page.WaitForURLAsync(url => url.Split('/')[^1].Length == 32);
        var second = await desk.SecondPage();
        await second.GotoAsync(desk.Page.Url);
        await second
            .Locator("[data-live=true]")
            .First.WaitForAsync(new() { State = WaitForSelectorState.Attached });

        await Choose(desk, "movement.step", "3");
        await Assertions.Expect(desk.Page.Locator(".lede")).ToContainTextAsync("three");
        await second.Locator("select[data-axis='notes.root']").SelectOptionAsync("D");
        await Assertions.Expect(second.Locator("[role=alert]")).ToContainTextAsync("changed on another page");
        Assert.Equal("", await desk.Barriers(second));
        await second.GetByRole(AriaRole.Button, new() { Name = "Keep both" }).ClickAsync();
        await Assertions.Expect(second.Locator("h1")).ToContainTextAsync("other version");
        await Assertions.Expect(second.Locator(".lede")).ToContainTextAsync("D minor pentatonic");

        await desk.Page.ReloadAsync();
        Assert.Contains("A minor pentatonic", await Sentence(desk), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_restart_of_the_studio_brings_the_page_back_with_everything()
    {
        using var studio = await StudioProcess.Start();
        await using var desk = await Desk.At(studio, chromium);
        await desk.Open("/");
        await desk.Page.Locator("nav[aria-label=Pages]").GetByText("Today").ClickAsync();
        await desk.Page.Locator("section.first h2 a").ClickAsync();
        await desk.Page.WaitForURLAsync("**/exercises/groups-of-five-up");
        await desk.Live();
        await Choose(desk, "movement.step", "2");
        await Assertions.Expect(desk.Page.Locator(".lede")).ToContainTextAsync("two notes higher");
        await desk.Page.WaitForURLAsync(url => url.Split('/')[^1].Length == 32);
        var sentence = await Sentence(desk);

        studio.Kill();
        await Assertions.Expect(desk.Page.Locator("#components-reconnect-modal")).ToBeVisibleAsync();
        Assert.Equal("", await desk.Barriers());
        await desk.Picture("studio-closed-1440-light");
        using var again = await StudioProcess.Start(studio.DataFolder, studio.Url);
        await Assertions
            .Expect(desk.Page.Locator("#components-reconnect-modal"))
            .ToBeHiddenAsync(new() { Timeout = 30_000 });
        await desk.Live();
        Assert.Equal(sentence, await Sentence(desk));

        await Undo(desk).ClickAsync();
        await Assertions.Expect(desk.Page.Locator(".lede")).Not.ToHaveTextAsync(sentence);
    }

    [Fact]
    public async Task It_can_be_used_by_keyboard_alone()
    {
        await using var desk = await Desk.At(_studio, chromium);
        await desk.Open("/exercises/groups-of-five-up");
        await desk.Page.Locator("select[data-axis='movement.step']").FocusAsync();

        await desk.Page.Keyboard.PressAsync("ArrowRight");
        await Assertions.Expect(desk.Page.Locator(".lede")).ToContainTextAsync("two notes higher");
        await desk.Page.Keyboard.PressAsync("ArrowDown");
        await Assertions
            .Expect(desk.Page.Locator("select[data-axis='movement.direction']"))
            .ToBeFocusedAsync();
        await desk.Page.Keyboard.PressAsync("Control+z");
        await Assertions.Expect(desk.Page.Locator(".lede")).ToContainTextAsync("one note higher");
    }

    [Fact]
    public async Task Another_exercise_stands_beside_it()
    {
        await using var desk = await Desk.At(_studio, chromium);
        await desk.Open("/exercises/groups-of-five-up");
        await desk.Page.GetByRole(AriaRole.Button, new() { Name = "Compare" }).ClickAsync();
        await desk.Page.GetByLabel("The other exercise").SelectOptionAsync("groups-of-three-up");

        await Assertions.Expect(desk.Page.Locator(".compare tbody tr").First).ToContainTextAsync("75");
        Assert.Equal("", await desk.Barriers());
    }

    [Fact]
    public async Task Printing_the_page_gives_the_sheet()
    {
        await using var desk = await Desk.At(_studio, chromium);
        await desk.Open("/exercises/groups-of-five-up");
        using var pdf = UglyToad.PdfPig.PdfDocument.Open(await desk.Page.PdfAsync(new() { Format = "A4" }));

        var drawn = pdf.GetPage(1).Paths.Count;
        output.WriteLine(
            string.Create(CultureInfo.InvariantCulture, $"{pdf.NumberOfPages} page, {drawn} paths")
        );
        Assert.Equal(1, pdf.NumberOfPages);
        Assert.InRange(drawn, 300, 100_000);
    }

    [Theory]
    [InlineData(Desk.Laptop, ColorScheme.Light)]
    [InlineData(Desk.Laptop, ColorScheme.Dark)]
    [InlineData(1024, ColorScheme.Light)]
    [InlineData(Desk.Phone, ColorScheme.Light)]
    [InlineData(Desk.Phone, ColorScheme.Dark)]
    public async Task Nothing_bars_the_way_or_hangs_over_the_edge(int width, ColorScheme scheme)
    {
        await using var desk = await Desk.At(_studio, chromium, width, scheme);
        foreach (var (path, name) in new[] { ("/", "today"), ("/exercises/groups-of-five-up", "exercise") })
        {
            await desk.Open(path);
            await desk.Picture($"{name}-{width}-{scheme.ToString().ToLowerInvariant()}");

            Assert.Equal("", await desk.Barriers());
            Assert.InRange(
                await desk.Page.EvaluateAsync<int>("document.documentElement.scrollWidth"),
                1,
                width
            );
        }

        Assert.Empty(desk.Faults);
    }

    [Fact]
    public async Task The_studio_opens_quickly_and_is_no_glutton()
    {
        var clock = Stopwatch.StartNew();
        using var studio = await StudioProcess.Start();
        using var web = new HttpClient();
        await web.GetStringAsync(
            new Uri(studio.Url + "/exercises/groups-of-five-up"),
            TestContext.Current.CancellationToken
        );
        var first = clock.ElapsedMilliseconds;
        var megabytes = studio.WorkingSet / 1_000_000;

        output.WriteLine(
            string.Create(CultureInfo.InvariantCulture, $"first page after {first} ms, {megabytes} MB")
        );
        Assert.InRange(megabytes, 20, 250);
        // The target is 3 s on a quiet machine; here other tests run beside it.
        Assert.InRange(first, 1, 20_000);
    }

    private static Task<string> Sentence(Desk desk) => desk.Page.Locator(".lede").InnerTextAsync();

    private static ILocator Undo(Desk desk) => desk.Page.Locator("button[aria-label^=Undo]");

    private static Task Choose(Desk desk, string axis, string value) =>
        desk.Page.Locator($"select[data-axis='{axis}']").SelectOptionAsync(value);

    // Steps an axis on and back as often as it goes, each timed from the key to the changed page.
    private static async Task<IReadOnlyList<double>> Stepped(Desk desk, string axis)
    {
        const string Timed = """
            async ([axis, key]) => {
              const control = document.querySelector(`select[data-axis='${axis}']`);
              if (!control) return -1;
              control.focus();
              const changed = new Promise((done) => {
                const watch = new MutationObserver(() => { watch.disconnect(); done(true); });
                watch.observe(document.querySelector("[data-live]"), { subtree: true, childList: true, characterData: true, attributes: true, attributeFilter: ["d", "x", "value"] });
                setTimeout(() => { watch.disconnect(); done(false); }, 2000);
              });
              const start = performance.now();
              control.dispatchEvent(new KeyboardEvent("keydown", { key, bubbles: true }));
              return (await changed) ? performance.now() - start : -1;
            }
            """;
        var times = new List<double>();
        foreach (var key in new[] { "ArrowRight", "ArrowLeft" })
        {
            var time = await desk.Page.EvaluateAsync<double>(Timed, new object[] { axis, key });
            if (time >= 0)
                times.Add(time);
        }

        return times;
    }
}
