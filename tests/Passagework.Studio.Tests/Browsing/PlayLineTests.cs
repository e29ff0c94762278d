using System.Text.Json;
using Microsoft.Playwright;
using Passagework.Studio.Tests.Hosting;

namespace Passagework.Studio.Tests.Browsing;

[Collection(BrowserTests.Name)]
public sealed class PlayLineTests(Chromium chromium, OneStudio one, ITestOutputHelper output)
{
    private const string Exercise = "/exercises/groups-of-five-up";

    [Fact]
    public async Task Keys_and_drags_do_what_the_line_of_words_says()
    {
        await using var desk = await Desk.At(one.Studio, chromium);
        await desk.Open(Exercise);
        await Playing.Field(desk, "Count-in").SelectOptionAsync("none");
        await Playing.Tempo(desk, "240");
        await desk.Page.Locator("h1").ClickAsync();

        await desk.Page.Keyboard.PressAsync(" ");
        await Playing.HeardUntil(desk, 1.3);
        await Assertions.Expect(desk.Page.Locator(".play-cursor").First).ToBeVisibleAsync();
        var bar = await desk.Page.EvaluateAsync<int>(Bracket);
        await Assertions.Expect(desk.Page.GetByLabel("From bar")).ToHaveValueAsync($"{bar}");
        await desk.Page.Keyboard.PressAsync(" ");
        await Assertions.Expect(desk.Page.Locator("[data-playing]")).ToHaveCountAsync(0);
        await Assertions.Expect(desk.Page.Locator(".play-cursor").First).ToBeHiddenAsync();

        await desk.Page.EvaluateAsync(
            "() => { window.clicks = 0; document.addEventListener('click', () => window.clicks++); }"
        );
        await Drag(desk, 38, 20);
        await Assertions.Expect(desk.Page.GetByLabel("From bar")).ToHaveValueAsync("2");
        await Assertions.Expect(desk.Page.GetByLabel("To bar")).ToHaveValueAsync("3");
        await Assertions.Expect(desk.Page.Locator(".play-loop").First).ToBeVisibleAsync();
        Assert.Equal(0, await desk.Page.EvaluateAsync<int>("() => window.clicks"));
        // A short press is the page's, and changes no loop.
        await Drag(desk, 3, 3);
        Assert.Equal(1, await desk.Page.EvaluateAsync<int>("() => window.clicks"));
        await desk.Page.WaitForTimeoutAsync(300);
        await Assertions.Expect(desk.Page.GetByLabel("From bar")).ToHaveValueAsync("2");

        await Playing.Field(desk, "Tempo").PressAsync("ArrowUp");
        await Assertions.Expect(Playing.Field(desk, "Tempo")).ToHaveValueAsync("241");
        await Playing.Field(desk, "Tempo").PressAsync("Shift+ArrowDown");
        await Assertions.Expect(Playing.Field(desk, "Tempo")).ToHaveValueAsync("236");
        await Playing.Field(desk, "Tempo").PressAsync("End");
        await Playing.Field(desk, "Tempo").PressAsync(" ");
        await Assertions.Expect(Playing.Field(desk, "Tempo")).ToHaveValueAsync("236 ");
        Assert.Equal("", string.Join("\n", desk.Faults));
    }

    [Fact]
    public async Task What_cannot_be_played_is_said_and_the_sound_before_goes_on()
    {
        await using var desk = await Desk.At(one.Studio, chromium);
        await desk.Open(Exercise);
        await Playing.Play(desk);
        var sound = await desk.Page.EvaluateAsync<string>("() => passageworkPlay.player.sound.id");

        await Playing.TypeTempo(desk, "fast");
        await Says(desk, "'fast' is no tempo (tempo). What can be: 10 to 1000 beats a minute.");
        await Playing.TypeTempo(desk, "5000");
        await Says(desk, "5000 is no tempo (tempo). What can be: 10 to 1000 beats a minute.");
        await Playing.Field(desk, "Backing").SelectOptionAsync("own");
        var chords = desk.Page.GetByLabel("Chords, with a line between bars");
        await chords.FillAsync("Am7 | H8");
        await chords.PressAsync("Enter");
        await Says(desk, "'H8' is no chord (backing bar 2). What can be: a chord such as Am7, D7 or C/E.");
        Assert.Equal(sound, await desk.Page.EvaluateAsync<string>("() => passageworkPlay.player.sound.id"));
        Assert.True(await desk.Page.EvaluateAsync<bool>("() => passageworkPlay.player.isPlaying"));
        Assert.Equal("", await desk.Barriers());

        await chords.FillAsync("Am7 | D7");
        await chords.PressAsync("Enter");
        await Assertions.Expect(desk.Page.Locator(".problem")).ToHaveCountAsync(0);
        await desk.Page.WaitForFunctionAsync(
            $"() => passageworkPlay.log.some((one) => one.joinsAt && one.soundId !== '{sound}')"
        );
        Assert.Equal("", string.Join("\n", desk.Faults));
    }

    [Fact]
    public async Task A_sound_that_is_forgotten_is_made_anew_and_one_that_does_not_come_is_said()
    {
        await using var desk = await Desk.At(one.Studio, chromium);
        await desk.Open(Exercise);
        var gone = new RouteFulfillOptions { Status = 404, Body = "This sound is not kept any more." };
        await desk.Page.RouteAsync("**/sound/*/*", route => route.FulfillAsync(gone), new() { Times = 2 });
        await Playing.Play(desk);
        await Playing.HeardUntil(desk, 0.2);
        await desk.Page.Locator("[data-play]").ClickAsync();

        await desk.Page.RouteAsync("**/sound/*/*", route => route.AbortAsync());
        var before = await desk.Page.EvaluateAsync<string>("() => passageworkPlay.player.sound.id");
        await Playing.TypeTempo(desk, "70");
        await desk.Page.WaitForFunctionAsync($"() => passageworkPlay.player.sound.id !== '{before}'");
        await desk.Page.Locator("[data-play]").ClickAsync();

        await Says(
            desk,
            "The sound did not come from the studio. What can be: play again; if it stays silent, load the page anew."
        );
        await Assertions.Expect(desk.Page.Locator("[data-playing]")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task The_cursor_is_at_the_note_that_is_heard_in_every_frame()
    {
        await using var desk = await Desk.At(one.Studio, chromium);
        await desk.Open(Exercise);
        await Playing.Field(desk, "Count-in").SelectOptionAsync("none");
        await Playing.Tempo(desk, "120");
        await Playing.Play(desk);
        await Playing.HeardUntil(desk, 0.3);

        var seen = await desk.Page.EvaluateAsync<JsonElement>(Watching);

        var (frames, seconds) = (
            seen.GetProperty("frames").GetInt32(),
            seen.GetProperty("seconds").GetDouble()
        );
        output.WriteLine(
            FormattableString.Invariant(
                $"{frames / seconds:F1} frames a second, {seen.GetProperty("astray").GetInt32()} astray, {seen.GetProperty("notes").GetInt32()} notes"
            )
        );
        Assert.Equal(0, seen.GetProperty("astray").GetInt32());
        Assert.InRange(seen.GetProperty("notes").GetInt32(), 8, 40);
        Assert.True(frames / seconds >= 30, $"{frames / seconds} frames a second");
    }

    [Theory]
    [InlineData(Desk.Laptop)]
    [InlineData(Desk.Phone)]
    public async Task It_can_be_used_by_everybody_while_it_plays(int width)
    {
        await using var desk = await Desk.At(one.Studio, chromium, width);
        await desk.Open(Exercise);
        if (width == Desk.Phone)
            await desk.Page.GetByText("More", new() { Exact = true }).ClickAsync();
        await Playing.Field(desk, "Backing").SelectOptionAsync("own");
        await Playing.Field(desk, "Count-in").SelectOptionAsync("none");
        await Playing.Field(desk, "Loop").SelectOptionAsync(new SelectOptionValue { Label = "bar 2" });
        await Assertions.Expect(desk.Page.GetByLabel("From bar")).ToHaveValueAsync("2");
        await Assertions.Expect(desk.Page.GetByLabel("To bar")).ToHaveValueAsync("2");
        await Playing.Play(desk);
        await Playing.HeardUntil(desk, 1);

        Assert.Equal("", await desk.Barriers());
        await desk.Pictures("playing", width, ColorScheme.Light, ColorScheme.Dark);
        Assert.Equal(0, await desk.Overflow());
        Assert.Equal("", string.Join("\n", desk.Faults));
    }

    // Presses the key in the same moment in which the bar is looked up, however slow the machine is.
    private const string Bracket = """
        () => {
          const heard = passageworkPlay.player.heard();
          const bars = heard.sound.times.notes.filter((note) => note.onsetS <= heard.seconds);
          document.body.dispatchEvent(new KeyboardEvent("keydown", { key: "[", bubbles: true }));
          return heard.sound.handle.noteBars[bars.at(-1).index] + 1;
        }
        """;

    // From the audio clock and what was given to the browser, not from the player: the note heard in each of a hundred
    // frames beside the one the cursor stands at. A note that changed within the frame may be either.
    private const string Watching = """
        async () => {
          const { log, player } = passageworkPlay;
          const context = player.context;
          const times = await (await fetch(`/sound/${log[0].soundId}/times`)).json();
          const noteAt = (time) => {
            const frame = time * 44100;
            const piece = log.findLast((one) => one.frame <= frame);
            const seconds = (piece.sampleFrom + frame - piece.frame) / 44100;
            return times.notes.findLast((note) => note.onsetS <= seconds)?.index ?? times.notes[0].index;
          };
          const heardNow = () => {
            const { contextTime, performanceTime } = context.getOutputTimestamp();
            return contextTime + (performance.now() - performanceTime) / 1000;
          };
          const cursor = document.querySelector(".play-cursor");
          const notes = new Set();
          let astray = 0, frames = 0, before = heardNow();
          const begin = performance.now();
          await new Promise((done) => {
            const look = () => {
              const now = heardNow();
              const at = Number(cursor.dataset.at);
              notes.add(at);
              if (at !== noteAt(now) && at !== noteAt(before)) astray++;
              before = now;
              if (++frames < 100) requestAnimationFrame(look);
              else done();
            };
            requestAnimationFrame(look);
          });
          return { frames, astray, notes: notes.size, seconds: (performance.now() - begin) / 1000 };
        }
        """;

    private static Task Says(Desk desk, string sentence) =>
        Assertions.Expect(desk.Page.Locator(".problem")).ToHaveTextAsync(sentence);

    private static async Task Drag(Desk desk, int from, int to)
    {
        var (start, end) = (await Middle(desk, from), await Middle(desk, to));
        await desk.Page.Mouse.MoveAsync(start.X, start.Y);
        await desk.Page.Mouse.DownAsync();
        await desk.Page.Mouse.MoveAsync((start.X + end.X) / 2, start.Y);
        await desk.Page.Mouse.MoveAsync(end.X, start.Y);
        await desk.Page.Mouse.UpAsync();
    }

    private static async Task<(float X, float Y)> Middle(Desk desk, int note)
    {
        var box = (await desk.Page.Locator($"[data-follow] [data-note='{note}']").First.BoundingBoxAsync())!;
        return (box.X + (box.Width / 2), box.Y + (box.Height / 2));
    }
}
