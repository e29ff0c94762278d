using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;
using Passagework.Sound.Click;
using Passagework.Sound.Performance;

namespace Passagework.Sound.Takes;

/// <summary>
/// Plays an exercise with planned faults into a planned recording, and says of every note what it was. Such takes prove
/// that a listener's parts fit together, never how well it hears: both come from the same people.
/// </summary>
/// <example>
/// <c>TakeMaker.Make(realization, new TakePlan { AskedBpm = 100, MissedNotes = [5] }, GuitarSound.CleanElectric, 1)</c>
/// </example>
public static class TakeMaker
{
    private const double LongestSeconds = 600;
    private const double TailSeconds = 1;
    private const double LowestKey = 21;
    private const double HighestKey = 100;

    /// <summary>The take; refused where the plan is out of range or the exercise can't be played so.</summary>
    /// <param name="realization">What should be played.</param>
    /// <param name="plan">What is played instead.</param>
    /// <param name="sound">The guitar.</param>
    /// <param name="seed">Chooses everything that the plan leaves to chance; the same seed gives the same samples.</param>
    /// <param name="sampleRate">Samples a second, 22,050 to 192,000.</param>
    public static Outcome<Take> Make(
        Realization realization,
        TakePlan plan,
        GuitarSound sound,
        ulong seed,
        int sampleRate = 44_100
    )
    {
        if (plan.Check() is { } fault)
        {
            return fault;
        }

        return TempoOf(plan)
            .Then(tempo => Performed(realization, plan, tempo))
            .Then(performance => HandsOf(realization, performance, plan, new TakeChance(seed)))
            .Then(hands =>
                Clicks(realization, plan)
                    .Then<Take>(clicks =>
                    {
                        var studio = new Studio(
                            sound,
                            sampleRate,
                            seed,
                            realization.Line.Recipe.Instrument.Tuning
                        );
                        var (samples, level) = Record(hands, plan, clicks, studio);
                        var meter = new AttackMeter(studio);
                        var truth = new TruthMaker(hands, meter).Notes();
                        return new Take(samples, sampleRate, truth, TruthMaker.Score(realization), level);
                    })
            );
    }

    private static (float[] Samples, TakeLevel Level) Record(
        TakeHands hands,
        TakePlan plan,
        ImmutableArray<ClickStroke> clicks,
        Studio studio
    )
    {
        var samples = new float[(int)Math.Ceiling((hands.LastSeconds + TailSeconds) * studio.SampleRate)];
        studio.Renderer(hands.Events).Render(samples, 0);
        var click = ClickTrack.Sound(clicks, studio.SampleRate);
        var recording = new TakeRecording(plan, studio.SampleRate, studio.Seed);
        return (samples, recording.Record(samples, into => click.Render(into, 0)));
    }

    private static Outcome<TakeHands> HandsOf(
        Realization realization,
        TimedPerformance performance,
        TakePlan plan,
        TakeChance chance
    )
    {
        var notes = TakeNote.Of(realization, performance);
        var neck = realization.Line.Recipe.Instrument;
        return TakeSlips
            .Of(notes, neck, plan, chance)
            .Then(slips =>
            {
                var hands = new TakeHands(notes, neck, plan, slips, chance);
                if (hands.Events.Any(e => e.Key is < LowestKey or > HighestKey))
                {
                    return new Fault("a note can't be made to sound in this tuning", "tuningCents", "0");
                }

                return hands.LastSeconds <= LongestSeconds
                    ? hands
                    : (Outcome<TakeHands>)
                        new Fault(
                            "the take lasts more than ten minutes",
                            "times",
                            "a faster tempo or fewer times through"
                        );
            });
    }

    // With a tempo that changes evenly from a to a(1 + d), the mean time of a beat is ln(1 + d) / (a d).
    private static Outcome<TempoPlan> TempoOf(TakePlan plan)
    {
        var (mean, change) = (plan.AskedBpm * plan.TempoRatio, plan.DriftPercent / 100);
        var from = change == 0 ? mean : mean * Math.Log(1 + change) / change;
        return Tempo.TryOf(from, out var first) && Tempo.TryOf(from * (1 + change), out var last)
            ? TempoPlan.Gradual(first, last, plan.Times)
            : new Fault("the tempo really played is out of range", "tempoRatio", "1 to 1000 beats a minute");
    }

    // Whoever plays faster or slower leaves the click behind: it keeps the asked tempo.
    private static Outcome<ImmutableArray<ClickStroke>> Clicks(Realization realization, TakePlan plan) =>
        plan.ClickUnderDb is null || !Tempo.TryOf(plan.AskedBpm, out var asked)
            ? ImmutableArray<ClickStroke>.Empty
            : TempoPlan
                .Steady(asked, plan.Times)
                .Then(tempo => Performed(realization, plan, tempo))
                .Then<ImmutableArray<ClickStroke>>(performance =>
                    ClickTrack.Strokes(performance, new ClickPlan())
                );

    private static Outcome<TimedPerformance> Performed(Realization line, TakePlan plan, TempoPlan tempo) =>
        Performer.Perform(
            line,
            new PerformancePlan { Tempo = tempo, LeadSeconds = plan.LeadInSeconds + (plan.LatencyMs / 1000) }
        );
}
