using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Instrument;

namespace Passagework.Tests.Engraving;

/// <summary>Exercises to draw: the library, and recipes on other instruments.</summary>
internal static class Played
{
    private static readonly Lazy<ImmutableArray<(string Id, Realization Played)>> Whole = new(() =>
        [.. Library.All.Select(exercise => (exercise.Id, Of(exercise.Recipe)))]
    );

    public static ImmutableArray<(string Id, Realization Played)> All => Whole.Value;

    public static Realization Of(Recipe recipe) =>
        LineBuilder.Build(recipe).Then(line => Realizer.Realize(line, Player.At(2))).OrThrow();

    public static Realization Of(string id) => Of(Recipe(id));

    public static Recipe Recipe(string id) => Library.Find(id).OrThrow().Recipe;

    public static Recipe On(string id, string tuning, int capo = 0) =>
        Recipe(id) with
        {
            Instrument = new Fretboard { Tuning = Tuning.Read(tuning).OrThrow(), Capo = capo },
        };

    public static Measurement Measured(string id) => Measured(Recipe(id));

    public static Measurement Measured(Recipe recipe) => Measurer.Measure(recipe, Player.At(2)).OrThrow();
}
