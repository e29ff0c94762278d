using System.Text.Json.Nodes;
using Microsoft.Playwright;
using Passagework.Studio.Tests.Features.Sound;
using Passagework.Studio.Tests.Hosting;

namespace Passagework.Studio.Tests.Browsing;

[Collection(BrowserTests.Name)]
public sealed class PlayTests(Chromium chromium, OneStudio one)
{
    private const string Exercise = "/exercises/groups-of-five-up";
    private const int Rate = 44_100;
    private const int Fade = 441;
    private const int Before = 529;
    private readonly StudioProcess _studio = one.Studio;

    [Fact]
    public async Task Tempo_and_loop_change_during_play_without_a_gap_and_in_their_place()
    {
        await using var desk = await Desk.At(_studio, chromium);
        await Tape.Install(desk);
        await desk.Open(Exercise);
        await Playing.Field(desk, "Count-in").SelectOptionAsync("none");
        await Playing.Tempo(desk, "150");
        await Playing.Play(desk);
        await Playing.HeardUntil(desk, 1.2);
        await Playing.Tempo(desk, "200");
        await Sounds(desk, 2);
        await desk.Page.WaitForTimeoutAsync(500);
        await Playing.Field(desk, "Loop").SelectOptionAsync("some");
        await desk.Page.GetByLabel("To bar").SelectOptionAsync("2");
        await desk.Page.GetByLabel("From bar").SelectOptionAsync("2");
        await Wraps(desk, 2);

        var tape = await Tape.Read(desk);
        await desk.Page.Locator("[data-play]").ClickAsync();

        Assert.DoesNotContain(tape.Log, given => given.IsLate);
        var stretches = Stretches(tape.Log);
        Assert.True(stretches.Count >= 5, string.Join("\n", stretches));
        var sounds = await Sounds(stretches);
        for (var i = 1; i < stretches.Count; i++)
        {
            AssertSamePlace(stretches[i - 1], stretches[i], sounds);
        }

        AssertRecorded(tape, stretches, sounds);
        Assert.Equal("", string.Join("\n", desk.Faults));
    }

    [Fact]
    public async Task Another_idea_takes_over_at_a_bar_line_and_late_samples_are_not_lost()
    {
        await using var desk = await Desk.At(_studio, chromium);
        await desk.Open(Exercise);
        await Playing.Tempo(desk, "200");
        await Playing.Play(desk);
        await Playing.HeardUntil(desk, 1.5);
        await desk.Page.Locator("select[data-axis='notes.root']").PressAsync("ArrowRight");
        await desk.Page.WaitForFunctionAsync("() => passageworkPlay.log.some((one) => one.joinsAt)");
        await Slowed(desk, 4_000);
        await desk.Page.WaitForFunctionAsync(
            "() => passageworkPlay.log.at(-1).contextTime - (passageworkPlay.log.findLast((one) => one.isLate)?.contextTime ?? Infinity) > 1"
        );

        var log = await Tape.ReadLog(desk);
        var stretches = Stretches(log);
        var taken = stretches.FindIndex(one => one.Sound != stretches[0].Sound);
        var sounds = await Sounds(stretches);
        AssertSamePlace(stretches[taken - 1], stretches[taken], sounds);
        Assert.Equal(0, sounds[stretches[taken].Sound].Place(stretches[taken].From + Before).Beat);
        var late = log.ToList().FindIndex(given => given.IsLate);
        Assert.Equal(log[late - 1].To, log[late].From);
        Assert.True(log[late].Frame > log[late - 1].Frame + log[late - 1].To - log[late - 1].From);
        Assert.Equal("", string.Join("\n", desk.Faults));
    }

    // Holds the next answer of the studio back for so long.
    private static Task Slowed(Desk desk, int milliseconds) =>
        desk.Page.RouteAsync(
            "**/sound/*/*-*",
            async route =>
            {
                await Task.Delay(milliseconds);
                await route.ContinueAsync();
            },
            new() { Times = 1 }
        );

    private static Task Sounds(Desk desk, int count) =>
        desk.Page.WaitForFunctionAsync(
            $"() => new Set(passageworkPlay.log.map((one) => one.soundId)).size >= {count}"
        );

    // The last sound begins anew that often, and the beginning was heard.
    private static Task Wraps(Desk desk, int times) =>
        desk.Page.WaitForFunctionAsync(
            $$"""
            () => {
              const { log, player } = passageworkPlay;
              const pieces = log.filter((one) => one.soundId === log.at(-1).soundId && one.sampleFrom !== undefined);
              const wraps = pieces.filter((one, i) => i > 0 && one.sampleFrom < pieces[i - 1].sampleFrom);
              return wraps.length >= {{times}} && player.context.currentTime > wraps[{{times}} - 1].contextTime + 0.3;
            }
            """,
            null,
            new() { Timeout = 20_000 }
        );

    // Pieces that follow one another sample by sample; what another sound took over from before it was heard is left out.
    private static List<Given> Stretches(IEnumerable<Given> log)
    {
        var stretches = new List<Given>();
        foreach (var given in log)
        {
            if (given.IsJoin)
            {
                stretches.RemoveAll(one => one.Frame >= given.Frame);
                continue;
            }

            var i = stretches.FindIndex(one =>
                one.Sound == given.Sound
                && one.To == given.From
                && one.Frame + one.To - one.From == given.Frame
            );
            if (i >= 0)
                stretches[i] = stretches[i] with { To = given.To };
            else
                stretches.Add(given);
        }

        return [.. stretches.OrderBy(one => one.Frame)];
    }

    private async Task<Dictionary<string, Fetched>> Sounds(List<Given> stretches)
    {
        using var web = new HttpClient();
        var sounds = new Dictionary<string, Fetched>();
        foreach (var group in stretches.GroupBy(one => one.Sound))
        {
            var times = await web.GetStringAsync(new Uri($"{_studio.Url}/sound/{group.Key}/times"));
            var samples = new float[group.Max(one => one.To)];
            for (long at = 0; at < samples.Length; at += 4 * Rate)
            {
                var end = Math.Min(samples.Length, at + (4 * Rate));
                var bytes = await web.GetByteArrayAsync(
                    new Uri($"{_studio.Url}/sound/{group.Key}/{at}-{end}")
                );
                Heard.Floats(bytes).CopyTo(samples, at);
            }

            sounds[group.Key] = new Fetched(JsonNode.Parse(times)!, samples);
        }

        return sounds;
    }

    // Where one stretch takes over from another the music goes on: the same beat of the same bar, or a bar line.
    private static void AssertSamePlace(Given old, Given next, Dictionary<string, Fetched> sounds)
    {
        Assert.True(old.Frame + old.To - old.From >= next.Frame + Fade, $"{old}, then {next}");
        var was = sounds[old.Sound].Place(old.From + next.Frame - old.Frame + Before);
        var becomes = sounds[next.Sound].Place(next.From + Before);
        if (old.Sound == next.Sound || was == becomes)
        {
            Assert.Equal(was, becomes);
            return;
        }

        // The bar that would have followed is not in the loop: it begins at its first.
        Assert.Equal(0, was.Beat);
        Assert.Equal((1, 0), becomes);
    }

    // What was recorded is what the studio made, at the joins two of it; there it is less steep than elsewhere.
    private static void AssertRecorded(Tape tape, List<Given> stretches, Dictionary<string, Fetched> sounds)
    {
        var heardFrom = Math.Max(tape.First, stretches[0].Frame) + 1;
        var heardTo = tape.First + tape.Samples.Length - 2;
        for (var i = 0; i < stretches.Count; i++)
        {
            var stretch = stretches[i];
            var to = Math.Min(heardTo, i + 1 < stretches.Count ? stretches[i + 1].Frame : long.MaxValue);
            for (var frame = Math.Max(heardFrom, stretch.Frame); frame < to; frame++)
            {
                var alone = sounds[stretch.Sound].At(stretch, frame);
                var isJoin = i > 0 && frame < stretch.Frame + Fade;
                var expected = isJoin ? Joined(stretches[i - 1], stretch, frame, sounds) : alone;
                Assert.Equal(expected, tape.At(frame), isJoin ? 2e-3f : 2e-4f);
            }
        }

        var sounding = Math.Max(heardFrom, stretches[0].Frame + (Rate / 5));
        Assert.InRange(tape.LongestSilence(sounding, heardTo), 0, Rate / 50);
        var steepest = tape.Steepest(sounding, heardTo);
        foreach (var stretch in stretches.Skip(1).Where(one => one.Frame + Fade + 1 < heardTo))
        {
            Assert.InRange(tape.Steepest(stretch.Frame - 1, stretch.Frame + Fade + 1), 0, 0.5f * steepest);
        }
    }

    // One falls while the other rises: straight where both are the same sound, else so that their powers add up to one.
    private static float Joined(Given old, Given next, long frame, Dictionary<string, Fetched> sounds)
    {
        var x = (frame - next.Frame) / (float)Fade;
        var (fall, rise) =
            old.Sound == next.Sound ? (1 - x, x) : (MathF.Cos(x * MathF.PI / 2), MathF.Sin(x * MathF.PI / 2));
        return (fall * sounds[old.Sound].At(old, frame)) + (rise * sounds[next.Sound].At(next, frame));
    }

    private sealed record Fetched(JsonNode Times, float[] Samples)
    {
        public float At(Given stretch, long frame) => Samples[stretch.From + frame - stretch.Frame];

        public (int LineBar, int Beat) Place(long sample)
        {
            var seconds = sample / (double)Rate;
            var bars = Times["bars"]!.AsArray();
            var bar = bars.Count(one => one!["startS"]!.GetValue<double>() <= seconds + 1e-4) - 1;
            var beat = bars[bar]!["beatsS"]!
                .AsArray()
                .Count(one => one!.GetValue<double>() <= seconds + 1e-4);
            var pass = Times["passes"]!.AsArray().Last(one => one!["bar"]!.GetValue<int>() <= bar)!;
            var start = bars[bar]!["beatsS"]![beat - 1]!.GetValue<double>();
            Assert.Equal(start, seconds, 5e-5);
            return (pass["lineBar"]!.GetValue<int>() + bar - pass["bar"]!.GetValue<int>(), beat - 1);
        }
    }
}
