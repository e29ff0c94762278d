using System.Collections.Immutable;
using System.Globalization;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Sound.Performance;

/// <summary>Count-in and all times through behind one another, as musical time and as seconds.</summary>
internal sealed class Timeline
{
    /// <summary>Longest music in seconds.</summary>
    public const double LongestSeconds = 3600;

    private const int MostBars = 20_000;

    /// <summary>A gradual change goes in steps of a quarter of a beat, so that MIDI can say exactly the same.</summary>
    private const int StepsPerBeat = 4;

    private readonly double _lead;

    private Timeline(RhythmPlan rhythm, PerformancePlan plan, BarRange range)
    {
        Rhythm = rhythm;
        _lead = plan.LeadSeconds;
        CountInBars = plan.CountInBars;
        Passes =
        [
            .. plan.Tempo.Passes.Select(
                (tempo, pass) =>
                    new PassSpan(plan.CountInBars + (pass * range.Count), range.Count, range.First, tempo)
            ),
        ];
        Bars = plan.CountInBars + (plan.Tempo.Passes.Length * range.Count);
        Tempi = Changes();
        Map = TempoMap.Of(Tempi);
    }

    public RhythmPlan Rhythm { get; }

    public int CountInBars { get; }

    public int Bars { get; }

    public ImmutableArray<PassSpan> Passes { get; }

    public ImmutableArray<TempoChange> Tempi { get; }

    public TempoMap Map { get; }

    public double EndSeconds => SecondsAt(BarTime(Bars));

    public static Outcome<Timeline> Of(Line line, PerformancePlan plan)
    {
        var rhythm = line.Recipe.Rhythm;
        var last = BarsOf(line);
        var range = plan.Bars ?? new BarRange(0, last);
        if (range.First < 0 || range.Count < 1 || (long)range.First + range.Count > last)
        {
            return new Fault(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"no bars {range.First + 1L} to {(long)range.First + range.Count}"
                ),
                "bars",
                string.Create(CultureInfo.InvariantCulture, $"bars within 1 to {last}")
            );
        }

        if (plan.CountInBars is < 0 or > PerformancePlan.MostCountIn)
        {
            return new Fault($"{plan.CountInBars} bars of count-in", "count-in", "0 to 8");
        }

        if ((long)range.Count * plan.Tempo.Passes.Length > MostBars)
        {
            return TooLong;
        }

        var timeline = new Timeline(rhythm, plan, range);
        return timeline.EndSeconds <= LongestSeconds ? timeline : TooLong;
    }

    /// <summary>Bars of a line, the last one counted whole; notes before the first bar line belong to none.</summary>
    public static int BarsOf(Line line)
    {
        var bars = line.End / line.Recipe.Rhythm.Meter.Bar;
        return Math.Max(1, (int)bars.Floor() + (bars.IsWhole ? 0 : 1));
    }

    public double SecondsAt(Fraction performed) => _lead + Map.SecondsAt(performed);

    public Fraction BarTime(int bar) => Rhythm.Meter.Bar * Fraction.Of(bar);

    /// <summary>Where a written time of the line falls in one time through, swing included.</summary>
    public Fraction Performed(PassSpan pass, Fraction written) =>
        Rhythm.Swing.Apply(written, Rhythm.Meter, Rhythm.NotesPerBeat)
        + BarTime(pass.FirstBar)
        - BarTime(pass.LineBar);

    private static Fault TooLong =>
        new("the music lasts more than an hour", "", "a faster tempo, fewer bars or fewer repeats");

    private ImmutableArray<TempoChange> Changes()
    {
        var changes = new List<TempoChange>();
        foreach (var pass in Passes)
        {
            // The count-in goes at the tempo of the first time through.
            var start = changes.Count == 0 ? Fraction.Zero : BarTime(pass.FirstBar);
            foreach (var (after, tempo) in Steps(pass))
            {
                var at = after == Fraction.Zero ? start : BarTime(pass.FirstBar) + after;
                if (changes.Count == 0 || changes[^1].Tempo != tempo)
                {
                    changes.Add(new TempoChange(at, tempo, Rhythm.Meter.Beat));
                }
            }
        }

        return [.. changes];
    }

    private IEnumerable<(Fraction After, Tempo Tempo)> Steps(PassSpan pass)
    {
        if (pass.Tempo.IsSteady)
        {
            yield return (Fraction.Zero, pass.Tempo.From);
            yield break;
        }

        var steps = pass.Bars * Rhythm.Meter.BeatsPerBar * StepsPerBeat;
        for (var step = 0; step < steps; step++)
        {
            yield return (
                Rhythm.Meter.Beat * Fraction.Of(step, StepsPerBeat),
                TempoPlan.Between(pass.Tempo.From, pass.Tempo.To, (step + 0.5) / steps)
            );
        }
    }
}
