using CsCheck;
using Passagework.Sound.Strings;

namespace Passagework.Tests.Sound;

/// <summary>The loop of a string can only lose, whatever its pitch and losses.</summary>
public sealed class LoopTapsTests
{
    private const int RandomSets = 1_000_000;

    private static readonly int[] Rates = [22_050, 44_100, 48_000, 96_000, 192_000];

    private static readonly Gen<(double Key, LossLaw Law, int Rate)> AnyLoop = Gen.Select(
        Gen.Double[20, 101],
        Gen.Select(Gen.Double[-12, 1], Gen.Double[-8, 6], Gen.Double[-14, -2], Gen.Double[-36, -18]),
        Gen.Int[0, Rates.Length - 1],
        (key, logs, rate) =>
            (
                key,
                new LossLaw(
                    Math.Exp(logs.Item1),
                    Math.Exp(logs.Item2),
                    Math.Exp(logs.Item3),
                    Math.Exp(logs.Item4)
                ),
                Rates[rate]
            )
    );

    [Fact]
    public void Gain_is_below_one_at_all_frequencies_for_a_million_random_loops()
    {
        var taps = new LoopTaps();
        var random = new Random(20);
        var worst = 0.0;
        for (var i = 0; i < RandomSets; i++)
        {
            var rate = Rates[random.Next(Rates.Length)];
            taps.Tune(Measuring.Tone.Hertz(20 + (81 * random.NextDouble())), RandomLaw(random), rate);

            // The fundamental's neighbourhood, the middle, and two places at random.
            worst = Math.Max(worst, taps.GainAt(0));
            worst = Math.Max(worst, taps.GainAt(Math.Tau / taps.Period));
            worst = Math.Max(worst, taps.GainAt(Math.PI * random.NextDouble()));
            worst = Math.Max(worst, taps.GainAt(Math.PI * random.NextDouble()));
        }

        Assert.InRange(worst, 0.99, 0.999_999_9);
    }

    [Fact]
    public void Gain_is_below_one_over_a_fine_grid_at_any_rate() =>
        AnyLoop.Sample(
            loop =>
            {
                var taps = new LoopTaps();
                taps.Tune(Measuring.Tone.Hertz(loop.Key), loop.Law, loop.Rate);
                Assert.All(Enumerable.Range(0, 257), k => Assert.True(taps.GainAt(Math.PI * k / 256) < 1));
            },
            iter: 2_000
        );

    [Fact]
    public void Gain_at_the_fundamental_is_the_law_s()
    {
        var law = new LossLaw(0.002, 0.5, 1e-4, 1e-13);
        var taps = new LoopTaps();
        foreach (var hertz in new[] { 82.41, 329.63, 1174.66 })
        {
            taps.Tune(hertz, law, 44_100);

            Assert.Equal(law.Gain(Math.Tau * hertz, hertz), taps.GainAt(Math.Tau * hertz / 44_100), 2e-6);
        }
    }

    [Fact]
    public void A_thousand_random_loops_ring_without_growing()
    {
        var random = new Random(7);
        for (var i = 0; i < 1000; i++)
        {
            var taps = new LoopTaps();
            taps.Tune(Measuring.Tone.Hertz(20 + (81 * random.NextDouble())), RandomLaw(random), 44_100);
            var loop = new DelayLoop(4096);

            // Windows of whole periods, so that each holds the same stretch of the string's past.
            var window = (int)Math.Round(Math.Ceiling(400 / taps.Period) * taps.Period);
            var drive = new float[window];
            for (var k = 80; k < 300; k++)
            {
                drive[k] = (float)((2 * random.NextDouble()) - 1);
            }

            var into = new float[window];
            loop.Run(taps, drive, into);
            drive.AsSpan().Clear();
            loop.Run(taps, drive, into);
            var before = Measuring.Tone.Rms(into);
            for (var pass = 0; pass < 25; pass++)
            {
                loop.Run(taps, drive, into);
                var now = Measuring.Tone.Rms(into);
                Assert.True(now <= (before * 1.001) + 1e-9, $"{taps.Period}: {before} grew to {now}");
                before = now;
            }
        }
    }

    [Fact]
    public void A_loop_computed_many_samples_at_a_time_equals_one_sample_at_a_time()
    {
        var taps = new LoopTaps();
        taps.Tune(659.26, new LossLaw(0.001, 0.5, 1e-4, 1e-13), 44_100);
        var many = new DelayLoop(4096);
        var one = new DelayLoop(4096);
        var drive = new float[256];
        drive[3] = 1;
        float[] fast = new float[256];
        float[] slow = new float[256];
        for (var block = 0; block < 40; block++)
        {
            many.Run(taps, drive, fast);
            for (var i = 0; i < 256; i++)
            {
                one.Run(taps, drive.AsSpan(i, 1), slow.AsSpan(i, 1));
            }

            drive.AsSpan().Clear();
            Assert.Equal(slow, fast);
        }
    }

    private static LossLaw RandomLaw(Random random) =>
        new(
            Math.Exp(-12 + (13 * random.NextDouble())),
            Math.Exp(-8 + (14 * random.NextDouble())),
            Math.Exp(-14 + (12 * random.NextDouble())),
            Math.Exp(-36 + (18 * random.NextDouble()))
        );
}
