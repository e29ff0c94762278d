using System.CommandLine;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Cli;

/// <summary>An exercise that was asked for, changed as asked and measured for a player.</summary>
/// <param name="Name">What it was called.</param>
/// <param name="Measured">What it asks.</param>
internal sealed record MeasuredExercise(string Name, Measurement Measured)
{
    public static Outcome<MeasuredExercise> Find(
        string name,
        Terminal terminal,
        Player player,
        Overrides overrides,
        ParseResult parsed
    ) =>
        ExerciseSource
            .Find(name, terminal)
            .Then(source =>
                overrides
                    .Apply(source.Recipe, parsed)
                    .Then(recipe => Measurer.Measure(recipe, player))
                    .Then<MeasuredExercise>(measured => new MeasuredExercise(source.Name, measured))
            );
}
