using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;
using Passagework.Sound;
using Passagework.Sound.Backing;
using Passagework.Sound.Click;
using Passagework.Sound.Mixing;
using Passagework.Sound.Performance;

namespace Passagework.Studio.Features.Sound;

/// <summary>Turns what is played and what was wished for into sound that can be rendered; renders nothing itself.</summary>
internal sealed class SoundPlanner
{
    /// <summary>Samples a second of everything the studio plays; the browser is asked to run at the same rate.</summary>
    public const int SampleRate = 44_100;

    private const double EvenStrength = 0.7;
    private readonly System.Threading.Lock _one = new();
    private readonly BandSounds _sounds = new(SampleRate);

    /// <summary>The sound; refused where a wish cannot be met, with the wish as the place of the fault.</summary>
    /// <param name="played">What is played.</param>
    /// <param name="wishes">How it is to be heard.</param>
    /// <param name="levels">Levels of earlier sounds of the same listener, to be kept.</param>
    public Outcome<PlayedSound> Plan(Realization played, SoundWishes wishes, KeptLevels levels) =>
        BackingOf(wishes, played.Line.Recipe.Rhythm)
            .Then(backing =>
            {
                var bars = wishes.Bars?.Count ?? Performer.BarsOf(played.Line);
                var shape = wishes.Loops
                    ? LoopShape.Of(Math.Max(1, bars), backing.Plan?.Chords.Bars.Length)
                    : default;
                return TempoOf(wishes.Bpm)
                    .Then(tempo => TempoPlan.Steady(tempo, shape.Passes))
                    .Then(tempo => Performer.Perform(played, PlanOf(wishes, tempo)))
                    .Then(performance => Arranged(Struck(performance, wishes), wishes, backing.Plan))
                    .Then<PlayedSound>(sound => new PlayedSound(
                        sound.Arrangement,
                        sound.Times,
                        shape,
                        mix => levels.Level(mix, wishes)
                    ));
            });

    private static PerformancePlan PlanOf(SoundWishes wishes, TempoPlan tempo) =>
        new()
        {
            Tempo = tempo,
            Bars = wishes.Bars,
            CountInBars = wishes.CountInBars,
        };

    private static Outcome<Tempo> TempoOf(double bpm) =>
        HeardTempo.Check(bpm).Then<Tempo>(heard => Tempo.TryOf(heard, out var tempo) ? tempo : default);

    private static Outcome<HeardBacking> BackingOf(SoundWishes wishes, RhythmPlan rhythm)
    {
        if (wishes.Chords is not { } text)
        {
            return new HeardBacking(null);
        }

        var groove = wishes.Groove ?? Grooves.Usual(rhythm.Meter, rhythm.Swing);
        if (Grooves.Check(groove, rhythm.Meter) is { } fault)
        {
            return fault;
        }

        return ChordProgression.Read(text).TryGet(out var chords, out var wrong)
            ? new HeardBacking(new BandPlan(chords, groove))
            : wrong with
            {
                Where = $"backing {wrong.Where}".TrimEnd(),
            };
    }

    private static TimedPerformance Struck(TimedPerformance performance, SoundWishes wishes) =>
        wishes.StrokesHeard
            ? performance
            : performance with
            {
                Events = [.. performance.Events.Select(Alike)],
            };

    private static StringEvent Alike(StringEvent one) =>
        one.Action is StringAction.Down or StringAction.Up or StringAction.Thumb or StringAction.Finger
            ? one with
            {
                Action = StringAction.Down,
                Strength = EvenStrength,
            }
            : one;

    private Outcome<(Arrangement Arrangement, TimeMap Times)> Arranged(
        TimedPerformance performance,
        SoundWishes wishes,
        BandPlan? backing
    )
    {
        var plan = new SoundPlan
        {
            Guitar = wishes.Guitar,
            Click = wishes.Click is { } pattern ? new ClickPlan { Pattern = pattern } : null,
            Backing = backing,
            SampleRate = SampleRate,
            Channels = 1,
        };
        lock (_one)
        {
            return Arrangement
                .Of(performance, plan, _sounds)
                .Then<(Arrangement, TimeMap)>(arrangement => (arrangement, performance.Times));
        }
    }

    private sealed record HeardBacking(BandPlan? Plan);
}
