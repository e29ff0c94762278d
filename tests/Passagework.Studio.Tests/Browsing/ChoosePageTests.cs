using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Data.Sqlite;
using Microsoft.Playwright;
using Passagework.Studio.Tests.Hosting;

namespace Passagework.Studio.Tests.Browsing;

[Collection(BrowserTests.Name)]
public sealed partial class ChoosePageTests
{
    private const string Three = "/choose?with=groups-of-five&with=groups-of-four&with=groups-of-three";
    private readonly StudioProcess _studio;
    private readonly Chromium _chromium;
    private readonly ITestOutputHelper _output;

    // Every test begins without the question that another one left.
    public ChoosePageTests(Chromium chromium, OneStudio one, ITestOutputHelper output)
    {
        (_chromium, _studio, _output) = (chromium, one.Studio, output);
        Scalar("delete from Settings where Name = $id", "Choose");
    }

    [Theory]
    [InlineData(Desk.Laptop)]
    [InlineData(Desk.Phone)]
    public async Task Every_state_is_free_of_barriers_and_pictured(int width)
    {
        await using var desk = await Desk.At(_studio, _chromium, width);
        await desk.Open(Three);
        await Weighed(desk, "Three");
        await Looked(desk, $"choose-{width}");
        await desk.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        Assert.Equal("", await desk.Barriers());
        await desk.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });

        await Button(desk, "Change the question").ClickAsync();
        await Button(desk, "Pick exercises").ClickAsync();
        await Button(desk, "Keep this decision").ClickAsync();
        await desk.Page.Locator("summary", new() { HasText = "For and against" }).First.ClickAsync();
        await Looked(desk, $"choose-question-{width}");

        await Button(desk, "Weigh every family").ClickAsync();
        await Weighed(desk, "29");
        await Looked(desk, $"choose-all-{width}");
        Assert.Empty(desk.Faults);
    }

    [Fact]
    public async Task Weights_moved_by_keys_past_the_turn_put_the_other_first_and_undo_brings_it_back()
    {
        await using var desk = await Desk.At(_studio, _chromium);
        await desk.Open(Three);
        await Weighed(desk, "Three");
        var turn = Turn()
            .Match(await desk.Page.Locator("dd", new() { HasText = "would lead" }).InnerTextAsync());
        Assert.Equal("Groups of five", await Leader(desk));
        Assert.Equal(("comes out even", "more"), (turn.Groups["what"].Value, turn.Groups["way"].Value));

        // Not counted before: with the other five at 100 a weight w has a share of w in 500 + w.
        await Button(desk, "Count it: Comes out even").ClickAsync();
        var slider = Slider(desk, "Comes out even");
        await slider.FocusAsync();
        await desk.Page.Keyboard.PressAsync("Home");
        var flip = double.Parse(turn.Groups["share"].Value, CultureInfo.InvariantCulture) / 100;
        var before = (int)Math.Floor(500 * (flip - 0.01) / (1 - (flip - 0.01)));
        await desk.Press("ArrowRight", before);
        await Shows(desk, "Groups of five");
        var after = (int)Math.Ceiling(500 * (flip + 0.01) / (1 - (flip + 0.01)));
        await desk.Press("ArrowRight", after - before);
        await Shows(desk, Capital(turn.Groups["then"].Value));

        // Presses within a second are one step: the next is to be one of its own.
        await Button(desk, $" to {after}").WaitForAsync();
        await desk.Page.WaitForTimeoutAsync(1_500);
        await desk.Press("Home");
        await desk
            .Page.GetByText("nothing counts")
            .WaitForAsync(new() { State = WaitForSelectorState.Detached });
        await Shows(desk, "Groups of five");
        await Button(desk, "Undo: comes out even").ClickAsync();
        await Shows(desk, Capital(turn.Groups["then"].Value));
        Assert.Empty(desk.Faults);
    }

    // 100 ms is wanted on a quiet machine; the test allows 250, and a busy machine three tries.
    [Fact]
    public async Task A_weight_moved_is_seen_at_once()
    {
        await using var desk = await Desk.At(_studio, _chromium);
        await desk.Open("/choose");
        await Weighed(desk, "29");
        var p95 = double.PositiveInfinity;
        for (var round = 0; round < 3 && p95 > 250; round++)
        {
            var times = await Moved(desk);
            p95 = times[28];
            _output.WriteLine(
                FormattableString.Invariant(
                    $"weight moved to answer changed: median {times[15]:0} ms, p95 {p95:0} ms of 30"
                )
            );
        }

        Assert.InRange(p95, 0, 250);
    }

    [Fact]
    public async Task A_decision_is_kept_listed_asked_again_thrown_away_and_brought_back()
    {
        await using var desk = await Desk.At(_studio, _chromium);
        await desk.Open(Three);
        await Weighed(desk, "Three");
        await Slider(desk, "Even load").FillAsync("40");
        await Button(desk, "Undo: even load from 100 to 40").WaitForAsync();
        await Button(desk, "Keep this decision").ClickAsync();
        await desk.Page.GetByLabel("The exercise taken").SelectOptionAsync("Groups of three");
        await desk.Page.GetByLabel("Why, in your words").FillAsync("<b>She</b> knows them already");
        await Button(desk, "Keep it").ClickAsync();
        var kept = desk.Page.Locator(".kept li", new() { HasText = "knows them already" });
        await kept.WaitForAsync();
        Assert.Contains(
            "<b>She</b> knows them already",
            await kept.InnerTextAsync(),
            StringComparison.Ordinal
        );

        // Another question, then the one of the decision again.
        await Slider(desk, "Even load").FillAsync("90");
        await desk.Page.GetByLabel("Player").SelectOptionAsync("a beginner");
        await desk.Page.GetByText("Which one for a beginner?").WaitForAsync();
        await desk.Open("/choose");
        await desk.Page.GetByText("Which one for a beginner?").WaitForAsync();
        await kept.GetByText("Ask again").ClickAsync();
        await desk.Live();
        await Weighed(desk, "Three");
        Assert.Equal("Which one for an intermediate player?", await desk.Page.Locator("h1").InnerTextAsync());
        Assert.Equal("40", await Slider(desk, "Even load").InputValueAsync());
        await desk.Page.WaitForURLAsync("**/choose");

        await kept.GetByText("Throw it away").ClickAsync();
        await kept.WaitForAsync(new() { State = WaitForSelectorState.Detached });
        await Button(desk, "Bring it back").ClickAsync();
        await kept.WaitForAsync();
        Assert.Empty(desk.Faults);
    }

    [Fact]
    public async Task A_search_shows_how_far_it_is_stops_when_told_and_a_find_opens_as_an_exercise()
    {
        await using var desk = await Desk.At(_studio, _chromium);
        await desk.Open(Three);
        await Weighed(desk, "Three");
        await desk.Page.GetByLabel("Notes of a figure").SelectOptionAsync("eight");
        await Button(desk, "Look for them").ClickAsync();
        await desk.Page.GetByText(SoFar()).WaitForAsync();
        Assert.Equal("", await desk.Barriers());
        await desk.Picture("choose-search-1440");

        // Weights move while it goes on.
        await Slider(desk, "Even load").FillAsync("10");
        await Button(desk, "Undo: even load").WaitForAsync();
        await Button(desk, "Stop and show them").ClickAsync();
        await desk.Page.GetByText("looked at, then stopped").WaitForAsync();
        Assert.Equal("", await desk.Barriers());
        await desk.Picture("choose-found-1440");
        var name = await desk.Page.Locator(".find ol h3").First.InnerTextAsync();
        await desk.Page.GetByText("Open as an exercise").First.ClickAsync();
        await desk.Page.WaitForURLAsync(OwnExercise());

        var key = Guid.Parse(new Uri(desk.Page.Url).Segments[^1]);
        Assert.Equal(name, Title(key));

        // Back from the exercise the finds are there, until they are thrown away.
        await desk.Open("/choose");
        await Weighed(desk, "Three");
        await desk.Page.GetByText("looked at, then stopped").WaitForAsync();
        Assert.Equal(name, await desk.Page.Locator(".find ol h3").First.InnerTextAsync());
        Assert.Equal("8", await desk.Page.GetByLabel("Notes of a figure").InputValueAsync());
        await Button(desk, "Throw these away").ClickAsync();
        await Button(desk, "Bring it back").ClickAsync();
        await desk.Page.Locator(".find ol h3").First.WaitForAsync();
        await Button(desk, "Throw these away").ClickAsync();
        await desk.Page.GetByText("What was found is thrown away").WaitForAsync();
        await desk.Open("/choose");
        await Weighed(desk, "Three");
        Assert.Equal(0, await desk.Page.Locator(".find ol").CountAsync());

        // Another scale, key and place.
        await desk.Page.GetByLabel("Notes of a figure").SelectOptionAsync("three");
        await desk.Page.GetByLabel("Root", new() { Exact = true }).SelectOptionAsync("D");
        await desk.Page.GetByLabel("Scale", new() { Exact = true }).SelectOptionAsync("dorian");
        await desk.Page.GetByLabel("Position", new() { Exact = true }).SelectOptionAsync("near fret 10");
        Assert.Equal(7, await desk.Page.Locator(".find fieldset input").CountAsync());
        await Button(desk, "Look for them").ClickAsync();
        await desk.Page.GetByText("In D dorian near fret 10, for ").WaitForAsync();
        await desk.Page.GetByText("Open as an exercise").First.ClickAsync();
        await desk.Page.WaitForURLAsync(OwnExercise());
        await desk.Live();
        Assert.Equal("D", await desk.Page.Locator("[data-axis='notes.root']").InputValueAsync());
        Assert.Equal("10", await desk.Page.Locator("[data-axis='layout.near']").InputValueAsync());
    }

    [Fact]
    public async Task Leaving_the_page_ends_its_search()
    {
        for (var visit = 0; visit < 3; visit++)
        {
            await using var desk = await Desk.At(_studio, _chromium);
            await desk.Open(Three);
            await Weighed(desk, "Three");
            await desk.Page.GetByLabel("Notes of a figure").SelectOptionAsync("seven");
            await Button(desk, "Look for them").ClickAsync();

            // Two searches go on at once; the third begins because the others have ended.
            await desk.Page.GetByText(SoFar()).WaitForAsync();
            await desk.Open("/settings");
        }
    }

    [Fact]
    public async Task What_cannot_be_asked_is_said_and_the_last_answer_stays()
    {
        await using var desk = await Desk.At(_studio, _chromium);
        await desk.Open("/choose?with=groups-of-five&with=groups-of-fife&with=groups-of-three");
        await Weighed(desk, "Two");
        await desk.Page.GetByText("No exercise 'groups-of-fife' in the library").WaitForAsync();

        foreach (
            var criterion in new[]
            {
                "Even load",
                "General use",
                "Staying power",
                "Use in music",
                "Rhythmic ambiguity",
            }
        )
        {
            await Slider(desk, criterion).FillAsync("0");
        }
        await desk.Page.GetByText("Nothing counts").WaitForAsync();
        Assert.Equal("Groups of five", await Leader(desk));
        await desk.Page.GetByText("Before the change: a column").WaitForAsync();
        Assert.Equal("", await desk.Barriers());

        // Loaded anew the way out is still there.
        await desk.Open("/choose");
        await desk.Page.GetByText("Nothing counts").WaitForAsync();
        await Slider(desk, "Even load").FillAsync("100");
        await Button(desk, "Undo: even load from 0 to 100").WaitForAsync();
        await Weighed(desk, "Two");

        await desk.Open("/choose?decision=nothing-of-the-kind");
        await desk.Page.GetByText("The address names no decision").WaitForAsync();
        await Weighed(desk, "Two");
        Assert.Empty(desk.Faults);
    }

    [Fact]
    public async Task Filters_say_what_they_left_out_and_exercises_are_picked_by_name()
    {
        await using var desk = await Desk.At(_studio, _chromium);
        await desk.Open("/choose");
        await Weighed(desk, "29");
        await Button(desk, "Change the question").ClickAsync();
        await desk.Page.GetByLabel("Widest stretch").SelectOptionAsync("3 frets at most");
        await desk.Page.GetByText("a stretch over 3 frets").WaitForAsync();
        await Button(desk, "See them").ClickAsync();
        Assert.Contains(
            "frets in one position",
            await desk.Page.Locator(".note li").First.InnerTextAsync(),
            StringComparison.Ordinal
        );

        await Button(desk, "Pick exercises").ClickAsync();
        foreach (var (word, name) in new[] { ("seven", "Groups of seven"), ("pedal", "Pedal note, rising") })
        {
            await desk.Page.GetByLabel("One form of a family").FillAsync(word);
            await Button(desk, name).First.ClickAsync();
            await desk.Page.GetByLabel(name, new() { Exact = true }).WaitForAsync();
        }

        await Weighed(desk, "Two");
        Assert.Equal("", await desk.Barriers());
        Assert.Empty(desk.Faults);
    }

    [Fact]
    public async Task Three_named_exercises_are_weighed_after_four_clicks()
    {
        await using var desk = await Desk.At(_studio, _chromium);
        await desk.Open("/choose");
        await Weighed(desk, "29");

        await Button(desk, "Pick exercises").ClickAsync();
        await desk.Page.GetByLabel("Groups of five", new() { Exact = true }).CheckAsync();
        await desk.Page.GetByText("One is picked; tick another to weigh them.").WaitForAsync();
        await desk.Page.GetByText("One exercise is picked so far").WaitForAsync();
        await desk.Page.GetByLabel("Groups of three", new() { Exact = true }).CheckAsync();
        await desk.Page.GetByLabel("Pedal note", new() { Exact = true }).CheckAsync();

        await Weighed(desk, "Three");
        await desk.Page.GetByText("Three are picked and weighed.").WaitForAsync();
        Assert.Equal(
            ["Groups of five", "Groups of three", "Pedal note"],
            (await desk.Page.Locator(".ranked h3").AllInnerTextsAsync()).Order(StringComparer.Ordinal)
        );
        await desk.Page.GetByLabel("Pedal note", new() { Exact = true }).UncheckAsync();
        await Weighed(desk, "Two");
        Assert.Equal("", await desk.Barriers());
        Assert.Empty(desk.Faults);
    }

    // Milliseconds from the event of a moved weight to the heads that say the new shares, sorted; ten to warm up.
    private static async Task<double[]> Moved(Desk desk)
    {
        var times = await desk.Page.EvaluateAsync<double[]>(
            """
            async () => {
              const slider = document.getElementById("weight-general-use");
              const heads = document.querySelector(".heads");
              const times = [];
              for (let move = 0; move < 40; move++) {
                const changed = new Promise((done) => {
                  const watch = new MutationObserver(() => { watch.disconnect(); done(); });
                  watch.observe(heads, { attributes: true, subtree: true, characterData: true, childList: true });
                });
                const began = performance.now();
                slider.value = 90 - move;
                slider.dispatchEvent(new Event("input", { bubbles: true }));
                await changed;
                times.push(performance.now() - began);
              }
              slider.dispatchEvent(new Event("change", { bubbles: true }));
              return times.slice(10);
            }
            """
        );
        Array.Sort(times);
        return times;
    }

    private static async Task Looked(Desk desk, string name)
    {
        Assert.Equal("", await desk.Barriers());
        await desk.Picture(name + "-light");
        await desk.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await desk.Picture(name + "-dark");
        await desk.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
    }

    private static Task Weighed(Desk desk, string number) =>
        desk.Page.GetByText(number + " exercises are weighed").WaitForAsync();

    private static ILocator Button(Desk desk, string name) =>
        desk.Page.GetByRole(AriaRole.Button, new() { Name = name });

    private static ILocator Slider(Desk desk, string name) =>
        desk.Page.GetByRole(AriaRole.Slider, new() { Name = name });

    private static Task<string> Leader(Desk desk) => desk.Page.Locator(".ranked h3").First.InnerTextAsync();

    private static Task Shows(Desk desk, string leader) =>
        desk.Page.Locator(".ranked li").First.GetByText(leader, new() { Exact = true }).WaitForAsync();

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private string? Title(Guid id) =>
        Scalar("select Title from Exercises where lower(Id) = $id", id.ToString());

    private string? Scalar(string sql, string id)
    {
        using var db = new SqliteConnection(
            $"Data Source={Path.Combine(_studio.DataFolder, "studio.db")};Pooling=False"
        );
        db.Open();
        using var command = db.CreateCommand();
        command.CommandText = sql;
        command.Parameters.AddWithValue("$id", id);
        return command.ExecuteScalar() as string;
    }

    [GeneratedRegex(
        @"(?<what>.*) counts for (?<way>more|less) than (?<share>[\d.]+) parts in 100, now [\d.]+: then (?<then>.*) would lead\.",
        RegexOptions.None,
        1000
    )]
    private static partial Regex Turn();

    [GeneratedRegex(@"[1-9][\d,]* of [\d,]+ looked at; [\d,]+ kept so far", RegexOptions.None, 1000)]
    private static partial Regex SoFar();

    [GeneratedRegex("/exercises/[0-9a-f]{32}$", RegexOptions.None, 1000)]
    private static partial Regex OwnExercise();
}
