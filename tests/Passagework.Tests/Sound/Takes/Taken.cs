using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Sound;
using Passagework.Sound.Performance;
using Passagework.Sound.Takes;
using Passagework.Tests.Rhythm;
using Passagework.Tests.Sound.Measuring;

namespace Passagework.Tests.Sound.Takes;

/// <summary>Short ways to takes of library exercises.</summary>
internal static class Taken
{
    public static Realization Of(string exercise) => Of(Library.Find(exercise).OrThrow().Recipe);

    public static Realization Of(Recipe recipe) =>
        LineBuilder.Build(recipe).Then(line => Realizer.Realize(line, Player.At(2))).OrThrow();

    public static Take Make(string exercise, TakePlan plan, uint seed = 1, GuitarSound sound = default) =>
        Make(Of(exercise), plan, seed, sound);

    public static Take Make(
        Realization realization,
        TakePlan plan,
        uint seed = 1,
        GuitarSound sound = default
    ) => TakeMaker.Make(realization, plan, sound, seed).OrThrow();

    public static Take Make(TakeIdea idea) =>
        Make(Of(idea.Recipe().OrThrow()), idea.Plan, idea.Seed, idea.Guitar);

    public static TakeIdea Demo(string id) => DemoTakes.All.Single(idea => idea.Id == id);

    /// <summary>The same line as it should be played, from a lead-in of so many seconds.</summary>
    public static TimedPerformance Performed(Realization realization, double bpm, double lead) =>
        Performer
            .Perform(
                realization,
                new PerformancePlan
                {
                    Tempo = TempoPlan.Steady(Beats.Tempo(bpm)).OrThrow(),
                    LeadSeconds = lead,
                }
            )
            .OrThrow();

    /// <summary>Every note for a third of its length, so that each begins in silence.</summary>
    public static Realization Shortened(Realization realization) =>
        realization with
        {
            Notes =
            [
                .. realization.Notes.Select(note =>
                    note with
                    {
                        Note = note.Note with { Duration = note.Note.Duration / Fraction.Of(3) },
                    }
                ),
            ],
        };

    /// <summary>Samples of a take between two times.</summary>
    public static ReadOnlySpan<float> Between(Take take, double from, double to) =>
        take.Samples.AsSpan((int)(from * Plucks.Rate), (int)((to - from) * Plucks.Rate));

    /// <summary>What one take has and another has not.</summary>
    public static float[] Difference(Take one, Take other) =>
        [.. one.Samples.Zip(other.Samples, (a, b) => a - b)];

    /// <summary>Root of the mean square while the guitar plays, its first stroke to its last end.</summary>
    public static double RmsPlaying(Take take, ReadOnlySpan<float> samples)
    {
        var sounds = take.Truth.Select(note => note.Sound).OfType<TruthSound>().ToList();
        var from = (int)(sounds.Min(sound => sound.Attack.Tenth) * Plucks.Rate);
        var to = (int)(sounds.Max(sound => sound.EndSeconds) * Plucks.Rate);
        return Tone.Rms(samples[from..to]);
    }
}
