using BenchmarkDotNet.Attributes;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Rhythm;
using Passagework.Sound;
using Passagework.Sound.Backing;
using Passagework.Sound.Click;
using Passagework.Sound.Mixing;
using Passagework.Sound.Performance;

namespace Passagework.Bench;

/// <summary>Performances and mixes: a minute of sixteenths, and what follows a change of tempo.</summary>
[MemoryDiagnoser]
public class BandBenchmarks
{
    private const int SampleRate = 44_100;
    private const int MinuteSamples = 60 * SampleRate;
    private static readonly BandSounds Sounds = new(SampleRate);
    private readonly float[] _block = new float[2 * 4096];
    private readonly float[] _minute = new float[2 * MinuteSamples];
    private Realization _line = null!;
    private Arrangement _sixteen = null!;
    private Mixdown _two = null!;

    /// <summary>Builds the inputs.</summary>
    [GlobalSetup]
    public void SetUp()
    {
        var recipe = Library.Find("groups-of-five-up-and-down").OrThrow().Recipe;
        recipe = recipe with { Movement = recipe.Movement with { Repeat = 8 } };
        _line = Measurer.Measure(recipe, Player.At(2)).OrThrow().Realization;
        var low = Perform(100, 0, 27);
        var high = Perform(100, 3, 27);
        var first = Arrangement.Of(low, Plan(GuitarSound.CleanElectric), Sounds).OrThrow();
        var second = Arrangement.Of(high, new SoundPlan { Guitar = GuitarSound.SteelString }).OrThrow();
        _two = new Mixdown([.. first.Mix.Voices, .. second.Mix.Voices], 2);
        _sixteen = Arrangement
            .Of(Perform(120, 0, 16), Plan(GuitarSound.CleanElectric), Sounds)
            .OrThrow()
            .Levelled();
    }

    /// <summary>A minute of two guitars, click and backing: at most 600 ms.</summary>
    [Benchmark(Baseline = true)]
    public float Two_guitars_click_and_backing()
    {
        for (var at = 0; at + 4096 <= MinuteSamples; at += 4096)
        {
            _two.Render(_block, at);
        }

        return _block[0];
    }

    /// <summary>Sixteen bars at another tempo, planned, arranged and rendered whole: at most 60 ms.</summary>
    [Benchmark]
    public float Sixteen_bars_after_a_tempo_change() => Changed(16);

    /// <summary>The first of them, with which a listener can begin.</summary>
    [Benchmark]
    public float First_bar_after_a_tempo_change() => Changed(1);

    /// <summary>Sixteen bars planned, nothing rendered.</summary>
    [Benchmark]
    public TimedPerformance Sixteen_bars_performed() => Perform(121, 0, 16);

    /// <summary>Loudness of a minute in two channels.</summary>
    [Benchmark]
    public double? Loudness_of_a_minute()
    {
        var meter = new LoudnessMeter(SampleRate, 2);
        meter.Add(_minute);
        return meter.Integrated;
    }

    private float Changed(int bars)
    {
        var performance = Perform(121, 0, 16);
        var arrangement = Arrangement
            .Of(performance, Plan(GuitarSound.CleanElectric), Sounds)
            .OrThrow()
            .LevelledLike(_sixteen.Mix);
        var (first, end) = performance.Times.Samples(new BarRange(0, bars), SampleRate);
        for (var at = first; at < end; at += 4096)
        {
            arrangement.Mix.Render(_block, at);
        }

        return _block[0];
    }

    private TimedPerformance Perform(double bpm, int firstBar, int bars) =>
        Performer
            .Perform(
                _line,
                new PerformancePlan
                {
                    Tempo = TempoPlan.Steady(Tempo.TryOf(bpm, out var tempo) ? tempo : default).OrThrow(),
                    Bars = new BarRange(firstBar, bars),
                }
            )
            .OrThrow();

    private static SoundPlan Plan(GuitarSound sound) =>
        new()
        {
            Guitar = sound,
            Click = new ClickPlan(),
            Backing = new BandPlan(ChordProgression.Read("Am7 | D7").OrThrow(), Groove.Straight),
        };
}
