using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Sound.Backing;
using Passagework.Sound.Click;
using Passagework.Sound.Performance;
using Passagework.Theory;

namespace Passagework.Sound.Mixing;

/// <summary>What is heard of a performance.</summary>
public sealed record SoundPlan
{
    /// <summary>The guitar; null leaves it to the student.</summary>
    public GuitarSound? Guitar { get; init; } = GuitarSound.CleanElectric;

    /// <summary>The click; null for none, except in the count-in.</summary>
    public ClickPlan? Click { get; init; }

    /// <summary>Drums, bass and chords; null for none.</summary>
    public BandPlan? Backing { get; init; }

    /// <summary>Root of a held tone; null for none.</summary>
    public NoteName? Drone { get; init; }

    /// <summary>Samples a second, 44,100 or 48,000.</summary>
    public int SampleRate { get; init; } = 44_100;

    /// <summary>1 or 2.</summary>
    public int Channels { get; init; } = 2;

    /// <summary>What can't be played in the metre of the performance, if anything.</summary>
    public Fault? Check(TimeMap times) =>
        Click?.Check(times.Meter) ?? (Backing is { } band ? Grooves.Check(band.Groove, times.Meter) : null);

    /// <summary>The clicks that are heard: all that were asked for, else those of the count-in.</summary>
    internal ImmutableArray<ClickStroke> Clicks(TimedPerformance performance)
    {
        var times = performance.Times;
        return
        [
            .. ClickTrack
                .Strokes(performance, Click ?? new ClickPlan())
                .Where(stroke => Click is not null || stroke.Seconds < times.BarSeconds(times.CountInBars)),
        ];
    }
}

/// <summary>A performance with everything around it, ready to be rendered from any sample on.</summary>
/// <param name="Mix">The voices, before or after levelling.</param>
/// <param name="Samples">Samples of each channel to the end of the last sound.</param>
/// <param name="SampleRate">Samples a second.</param>
public sealed record Arrangement(Mixdown Mix, long Samples, int SampleRate)
{
    /// <summary>What sounds after the last bar line is cut off here.</summary>
    private const double LongestEndSeconds = 4;

    /// <summary>Brings in the voices that were asked for.</summary>
    /// <param name="performance">What is played.</param>
    /// <param name="plan">What is heard of it.</param>
    /// <param name="sounds">Sounds of the backing to use again; null makes them anew.</param>
    public static Outcome<Arrangement> Of(
        TimedPerformance performance,
        SoundPlan plan,
        BandSounds? sounds = null
    )
    {
        if (plan.Check(performance.Times) is { } fault)
        {
            return fault;
        }

        var voices = ImmutableArray.CreateBuilder<MixVoice>();
        var samples = 0L;
        foreach (var (voice, needed) in Voices(performance, plan, sounds))
        {
            voices.Add(voice);
            samples = Math.Max(samples, needed);
        }

        var longest = (performance.Times.EndSeconds + LongestEndSeconds) * plan.SampleRate;
        return new Arrangement(
            new Mixdown(voices.ToImmutable(), plan.Channels),
            Math.Min(samples, (long)longest),
            plan.SampleRate
        );
    }

    /// <summary>The same at −18 LUFS, or another loudness.</summary>
    public Arrangement Levelled(double lufs = MixBalance.UsualLufs) =>
        this with
        {
            Mix = MixBalance.Level(Mix, Samples, SampleRate, lufs),
        };

    /// <summary>The same voices at the levels and gain of a mix levelled before: for another tempo or another recipe.</summary>
    /// <exception cref="ArgumentException">Other parts than that mix.</exception>
    public Arrangement LevelledLike(Mixdown before)
    {
        if (!Mix.Voices.Select(voice => voice.Part).SequenceEqual(before.Voices.Select(voice => voice.Part)))
        {
            throw new ArgumentException("A mix of other parts.", nameof(before));
        }

        var voices = Mix.Voices.Zip(before.Voices, (voice, levelled) => voice with { Gain = levelled.Gain });
        return this with { Mix = new Mixdown([.. voices], Mix.Channels, before.Gain) };
    }

    private static IEnumerable<(MixVoice Voice, long Samples)> Voices(
        TimedPerformance performance,
        SoundPlan plan,
        BandSounds? sounds
    )
    {
        var times = performance.Times;
        if (plan.Guitar is { } sound)
        {
            var tuning = performance.Line.Line.Recipe.Instrument.Tuning;
            var guitar = new GuitarRenderer(sound, performance.Events, plan.SampleRate, tuning: tuning);
            yield return (new MixVoice(MixPart.Guitar, guitar.Render), guitar.SamplesNeeded);
        }

        if (plan.Clicks(performance) is { IsEmpty: false } strokes)
        {
            var click = ClickTrack.Sound(strokes, plan.SampleRate);
            yield return (new MixVoice(MixPart.Click, click.Render), click.SamplesNeeded);
        }

        if (plan.Backing is { } backing)
        {
            var bank = sounds ?? new BandSounds(plan.SampleRate);
            var band = Band.Sound(Band.Notes(times, backing), bank);
            yield return (new MixVoice(MixPart.Backing, band.Render), band.SamplesNeeded);
        }

        if (plan.Drone is { } root)
        {
            var drone = new Drone(root, plan.SampleRate, times.EndSeconds);
            yield return (new MixVoice(MixPart.Drone, drone.Render), drone.SamplesNeeded);
        }
    }
}
