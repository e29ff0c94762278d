using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Sound.Performance;

/// <summary>Where the notes, bars and beats of a performance are in seconds, for a cursor that moves along.</summary>
/// <remarks>Bars count from 0 at the first bar of the count-in; second 0 is the first sample.</remarks>
public sealed class TimeMap
{
    private readonly Timeline _timeline;

    internal TimeMap(Timeline timeline, ImmutableArray<TimedNote> notes)
    {
        _timeline = timeline;
        Notes = notes;
        var beats = (timeline.Bars * Meter.BeatsPerBar) + 1;
        BeatSeconds =
        [
            .. Enumerable.Range(0, beats).Select(beat => timeline.SecondsAt(Meter.Beat * Fraction.Of(beat))),
        ];
    }

    /// <summary>The metre.</summary>
    public Meter Meter => _timeline.Rhythm.Meter;

    /// <summary>The note values, metre and swing of the line.</summary>
    public RhythmPlan Rhythm => _timeline.Rhythm;

    /// <summary>Bars before the first time through.</summary>
    public int CountInBars => _timeline.CountInBars;

    /// <summary>All bars, those of the count-in too.</summary>
    public int Bars => _timeline.Bars;

    /// <summary>The times through.</summary>
    public ImmutableArray<PassSpan> Passes => _timeline.Passes;

    /// <summary>Every note of every time through, in order of onset.</summary>
    public ImmutableArray<TimedNote> Notes { get; }

    /// <summary>Each felt beat from the first of the count-in, and the end of the last one.</summary>
    public ImmutableArray<double> BeatSeconds { get; }

    /// <summary>The last bar line.</summary>
    public double EndSeconds => BeatSeconds[^1];

    /// <summary>Seconds of a musical time from the first bar of the count-in, swing not applied.</summary>
    public double SecondsAt(Fraction performed) => _timeline.SecondsAt(performed);

    /// <summary>The bar line before a bar; for the number of bars the last one.</summary>
    /// <exception cref="ArgumentOutOfRangeException">No such bar.</exception>
    public double BarSeconds(int bar)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(bar);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(bar, Bars);
        return BeatSeconds[bar * Meter.BeatsPerBar];
    }

    /// <summary>Beats, with their parts, from the first bar of the count-in; undoes <see cref="SecondsAt"/>.</summary>
    public double BeatsAt(double seconds) =>
        _timeline.Map.WholeNotesAt(seconds - _timeline.SecondsAt(Fraction.Zero)) / Meter.Beat.ToDouble();

    /// <summary>The place in <see cref="Notes"/> of the note that has begun last; null before the first.</summary>
    public int? NoteAt(double seconds)
    {
        var (from, beyond) = (-1, Notes.Length);
        while (beyond - from > 1)
        {
            var middle = (from + beyond) / 2;
            (from, beyond) = Notes[middle].OnsetSeconds <= seconds ? (middle, beyond) : (from, middle);
        }

        return from < 0 ? null : from;
    }

    /// <summary>The first and the last sample, not included, of bars.</summary>
    /// <param name="bars">Bars from the first of the count-in.</param>
    /// <param name="sampleRate">Samples a second.</param>
    public (long First, long End) Samples(BarRange bars, int sampleRate) =>
        (SampleAt(bars.First, sampleRate), SampleAt(bars.First + bars.Count, sampleRate));

    private long SampleAt(int bar, int sampleRate) => (long)Math.Round(BarSeconds(bar) * sampleRate);
}
