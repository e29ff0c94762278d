using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Sound.Mixing;
using Passagework.Sound.Performance;

namespace Passagework.Sound.Click;

/// <summary>How prominent a click is.</summary>
public enum ClickWeight
{
    /// <summary>The first beat of a bar.</summary>
    Strong,

    /// <summary>The first beat of a later group.</summary>
    Medium,

    /// <summary>Another beat.</summary>
    Weak,

    /// <summary>Between the beats.</summary>
    Pulse,

    /// <summary>A group of the line, in a sound of its own.</summary>
    Group,
}

/// <summary>One click.</summary>
/// <param name="Seconds">When it begins.</param>
/// <param name="Weight">How prominent it is.</param>
public readonly record struct ClickStroke(double Seconds, ClickWeight Weight);

/// <summary>Lays a click over a performance.</summary>
public static class ClickTrack
{
    /// <summary>All clicks in order of time.</summary>
    /// <exception cref="ArgumentException">The plan does not fit the metre.</exception>
    public static ImmutableArray<ClickStroke> Strokes(TimedPerformance performance, ClickPlan plan)
    {
        var times = performance.Times;
        if (plan.Check(times.Meter) is { } fault)
        {
            throw new ArgumentException(fault.ToString(), nameof(plan));
        }

        var places = BeatGroups.Places(plan.Grouping.IsEmpty ? BeatGroups.Of(times.Meter) : plan.Grouping);
        var strokes = new List<ClickStroke>();
        for (var bar = 0; bar < times.Bars; bar++)
        {
            var counted = bar < times.CountInBars;
            if (!counted && !plan.Sounds(bar - times.CountInBars))
            {
                continue;
            }

            var pattern = counted ? ClickPattern.Beats : plan.Pattern;
            var inBar = Enumerable
                .Range(0, places.Length)
                .SelectMany(beat =>
                    OfBeat(pattern, plan, times, (beat, places[beat].Place, places[beat].Size))
                )
                .Select(click => new ClickStroke(Seconds(times, bar, click.Beats), click.Weight));
            strokes.AddRange(inBar);
        }

        if (plan.Pattern is ClickPattern.Groups or ClickPattern.BeatsAndGroups)
        {
            strokes.AddRange(OfGroups(performance));
        }

        return [.. strokes.OrderBy(stroke => stroke.Seconds).ThenBy(stroke => stroke.Weight)];
    }

    /// <summary>The clicks as sound.</summary>
    public static StrikeTrack Sound(ImmutableArray<ClickStroke> strokes, int sampleRate)
    {
        var sounds = ClickSounds.Of(sampleRate);
        return new StrikeTrack(
            strokes.Select(stroke => new Strike(
                (long)Math.Round(stroke.Seconds * sampleRate),
                sounds[(int)stroke.Weight],
                1
            ))
        );
    }

    private static IEnumerable<(Fraction Beats, ClickWeight Weight)> OfBeat(
        ClickPattern pattern,
        ClickPlan plan,
        TimeMap times,
        (int Number, int Place, int Size) beat
    )
    {
        var at = Fraction.Of(beat.Number);
        var weight = (beat.Number, beat.Place) switch
        {
            (0, _) => ClickWeight.Strong,
            (_, 0) => ClickWeight.Medium,
            _ => ClickWeight.Weak,
        };
        return pattern switch
        {
            ClickPattern.Beats or ClickPattern.BeatsAndGroups => [(at, weight)],
            ClickPattern.Backbeat when beat.Place == beat.Size - 1 => [(at, ClickWeight.Weak)],
            ClickPattern.Downbeat when beat.Number == 0 => [(at, weight)],
            ClickPattern.Offbeat => [(at + Fraction.Of(1, 2), ClickWeight.Weak)],
            ClickPattern.Subdivision => Pulses(at, weight, plan.PulsesPerBeat ?? times.Rhythm.NotesPerBeat),
            _ => [],
        };
    }

    private static IEnumerable<(Fraction Beats, ClickWeight Weight)> Pulses(
        Fraction beat,
        ClickWeight weight,
        int pulses
    ) =>
        Enumerable
            .Range(0, pulses)
            .Select(pulse => (beat + Fraction.Of(pulse, pulses), pulse == 0 ? weight : ClickWeight.Pulse));

    private static double Seconds(TimeMap times, int bar, Fraction beats)
    {
        var rhythm = times.Rhythm;
        var written = (rhythm.Meter.Bar * Fraction.Of(bar)) + (rhythm.Meter.Beat * beats);
        return times.SecondsAt(rhythm.Swing.Apply(written, rhythm.Meter, rhythm.NotesPerBeat));
    }

    private static IEnumerable<ClickStroke> OfGroups(TimedPerformance performance)
    {
        var notes = performance.Line.Notes;
        for (var i = 0; i < notes.Length; i++)
        {
            if (notes[i].Note.InGroup == 0)
            {
                yield return new ClickStroke(performance.Times.Notes[i].OnsetSeconds, ClickWeight.Group);
            }
        }
    }
}
