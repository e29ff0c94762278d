using System.Globalization;
using System.Text.RegularExpressions;
using Passagework.Sound;
using Passagework.Sound.Backing;
using Passagework.Sound.Click;
using Passagework.Sound.Mixing;
using Passagework.Sound.Performance;
using Passagework.Tests.Outside;
using Passagework.Tests.Sound.Performance;
using Passagework.Theory;

namespace Passagework.Tests.Sound.Mixing;

public sealed class ArrangementTests
{
    private const string Bar =
        "6:5/1D 6:8/4U 5:5/1D 5:7/3U 4:5/1D 4:7/3U 3:5/1D 3:7/3U 2:5/1D 2:8/4U 1:5/1D 1:8/4U 1:5/1D 2:8/4U 2:5/1D 3:7/3U";

    private static readonly Dictionary<string, SoundPlan> Plans = new()
    {
        ["clean alone"] = new SoundPlan(),
        ["steel, one channel"] = new SoundPlan { Guitar = GuitarSound.SteelString, Channels = 1 },
        ["nylon with click"] = new SoundPlan { Guitar = GuitarSound.Nylon, Click = new ClickPlan() },
        ["driven with all"] = All(GuitarSound.DrivenElectric),
        ["clean with all"] = All(GuitarSound.CleanElectric) with { SampleRate = 48_000 },
        ["band alone"] = All(null) with { Click = null },
    };

    public static TheoryData<string> PlanNames => [.. Plans.Keys];

    [Theory]
    [MemberData(nameof(PlanNames))]
    public void A_mix_is_as_loud_as_it_should_be_by_our_meter_and_an_outside_one(string name)
    {
        var plan = Plans[name];
        var (arrangement, sound) = Rendered(plan, 120);

        Assert.True(sound.Max(Math.Abs) <= PeakCeiling.Highest);
        Assert.Equal(-18.0, Ours(arrangement, sound), 0.2);
        Assert.Equal(-18.0, Theirs(arrangement), 0.3);
    }

    [Fact]
    public void Bars_rendered_on_their_own_join_to_the_whole()
    {
        var performance = Played.Perform(Played.Of(Bar), Played.At(130, times: 3) with { CountInBars = 1 });
        var plan = All(GuitarSound.DrivenElectric);
        var whole = Arrangement.Of(performance, plan).OrThrow().Levelled();
        var expected = new float[whole.Samples * 2];
        whole.Mix.Render(expected, 0);
        var found = new float[expected.Length];

        // Each bar by a renderer of its own, the last one first.
        for (var bar = performance.Times.Bars - 1; bar >= 0; bar--)
        {
            var (first, end) = performance.Times.Samples(new BarRange(bar, 1), 44_100);
            var fresh = Arrangement.Of(performance, plan).OrThrow().LevelledLike(whole.Mix);
            fresh.Mix.Render(found.AsSpan((int)first * 2, (int)(end - first) * 2), first);
        }

        var (from, to) = performance.Times.Samples(new BarRange(0, performance.Times.Bars), 44_100);
        var error = Enumerable
            .Range((int)from * 2, (int)(to - from) * 2)
            .Max(i => Math.Abs(expected[i] - found[i]));
        // −80 dBFS.
        Assert.True(error < 1e-4, $"{error}");
    }

    [Fact]
    public void A_loop_of_two_bars_three_times_has_no_step_at_its_joins()
    {
        var plan = Played.At(110, times: 3) with { Bars = new BarRange(0, 2) };
        var performance = Played.Perform(Played.Of($"{Bar} {Bar}"), plan);
        var arrangement = Arrangement.Of(performance, new SoundPlan { Channels = 1 }).OrThrow().Levelled();
        var sound = new float[arrangement.Samples];
        arrangement.Mix.Render(sound, 0);

        var steepest = Steepest(sound, 0, sound.Length - 1);
        foreach (var pass in performance.Times.Passes.Skip(1))
        {
            var join = (int)performance.Times.Samples(new BarRange(pass.FirstBar, 1), 44_100).First;
            // A stroke falls on the join: not steeper than the same stroke elsewhere.
            Assert.True(Steepest(sound, join - 20, join + 20) <= steepest);
            Assert.Equal(
                Steepest(sound, (int)(0.1 * 44_100) - 200, (int)(0.1 * 44_100) + 400),
                Steepest(sound, join - 200, join + 400),
                0.05
            );
        }
    }

    [Fact]
    public void Rendering_allocates_nothing_however_long()
    {
        var performance = Played.Perform(Played.Of(Bar), Played.At(120, times: 8));
        var arrangement = Arrangement.Of(performance, All(GuitarSound.CleanElectric)).OrThrow();
        var block = new float[2 * 4096];
        arrangement.Mix.Render(block, 0);

        var before = GC.GetAllocatedBytesForCurrentThread();
        for (long at = 4096; at + 4096 < arrangement.Samples; at += 4096)
        {
            arrangement.Mix.Render(block, at);
        }

        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void Without_a_click_only_the_count_in_is_clicked()
    {
        var performance = Played.Perform(Played.Of(Bar), Played.At() with { CountInBars = 1 });
        var arrangement = Arrangement
            .Of(performance, new SoundPlan { Guitar = null, Channels = 1 })
            .OrThrow();
        var sound = new float[(int)(4.1 * 44_100)];
        arrangement.Mix.Render(sound, 0);

        Assert.True(sound[..88_200].Max() > 0.1f);
        Assert.Equal(0, sound[(int)(2.1 * 44_100)..].Max(Math.Abs));
    }

    [Fact]
    public void The_level_of_another_mix_asks_for_the_same_parts()
    {
        var performance = Played.Perform(Played.Of(Bar));
        var full = Arrangement.Of(performance, All(GuitarSound.Nylon)).OrThrow();

        Assert.Throws<ArgumentException>(() =>
            Arrangement.Of(performance, new SoundPlan()).OrThrow().LevelledLike(full.Mix)
        );
    }

    private static SoundPlan All(GuitarSound? guitar) =>
        new()
        {
            Guitar = guitar,
            Click = new ClickPlan(),
            Backing = new BandPlan(ChordProgression.Read("Am7 | D7").OrThrow(), Groove.Swung),
            Drone = NoteName.TryParse("A", out var a) ? a : default,
        };

    private static (Arrangement Arrangement, float[] Sound) Rendered(SoundPlan plan, double bpm)
    {
        var performance = Played.Perform(Played.Of(Bar), Played.At(bpm, times: 2));
        var arrangement = Arrangement.Of(performance, plan).OrThrow().Levelled();
        var sound = new float[arrangement.Samples * plan.Channels];
        arrangement.Mix.Render(sound, 0);
        return (arrangement, sound);
    }

    private static double Ours(Arrangement arrangement, float[] sound)
    {
        var meter = new LoudnessMeter(arrangement.SampleRate, arrangement.Mix.Channels);
        meter.Add(sound);
        return meter.Integrated ?? double.NaN;
    }

    // ffmpeg's "ebur128" filter, which prints tenths.
    private static double Theirs(Arrangement arrangement)
    {
        var file = Path.GetTempFileName();
        try
        {
            using (var stream = File.Create(file))
            {
                new WavFile(arrangement.SampleRate, arrangement.Mix.Channels, SampleFormat.Float32).Write(
                    stream,
                    arrangement.Samples,
                    arrangement.Mix.Render
                );
            }

            var said = OutsideProgram.Run(
                "ffmpeg",
                [
                    "-v",
                    "error",
                    "-f",
                    "wav",
                    "-i",
                    file,
                    "-af",
                    "ebur128=metadata=1,ametadata=print:key=lavfi.r128.I:file=-",
                    "-f",
                    "null",
                    "-",
                ]
            );
            var last = Regex.Matches(
                said,
                @"r128\.I=(?<lufs>-?[\d.]+)",
                RegexOptions.ExplicitCapture,
                TimeSpan.FromSeconds(5)
            )[^1];
            return double.Parse(last.Groups["lufs"].Value, CultureInfo.InvariantCulture);
        }
        finally
        {
            File.Delete(file);
        }
    }

    private static float Steepest(float[] sound, int from, int to) =>
        Enumerable.Range(from, to - from).Max(i => Math.Abs(sound[i + 1] - sound[i]));
}
