using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Cli;

/// <summary>Exercises that may prepare a piece, as they are named on the command line.</summary>
/// <param name="Exercises">Played on the instrument of the piece, with its technique.</param>
/// <param name="LeftOut">What can't be played there, and why.</param>
internal sealed record PreparingSource(
    ImmutableArray<PreparingExercise> Exercises,
    ImmutableArray<LeftOutPiece> LeftOut
)
{
    private const string UsualForm = "up-and-down";

    /// <summary>
    /// Families (their up-and-down form with both first strokes, all forms where there is none) or exercises as they are
    /// written; every family where none is named. What is named must be playable.
    /// </summary>
    public static Outcome<PreparingSource> Find(
        IReadOnlyCollection<string> names,
        Piece piece,
        Player player,
        Terminal terminal
    )
    {
        var exercises = ImmutableArray.CreateBuilder<PreparingExercise>();
        var leftOut = ImmutableArray.CreateBuilder<LeftOutPiece>();
        foreach (var name in names.Count == 0 ? Library.Families : [.. names.Distinct()])
        {
            var found = Forms(name, terminal)
                .Then(forms => Played(forms.Name, forms.Recipes, piece.Line.Recipe, player));
            if (found.TryGet(out var exercise, out var fault))
            {
                exercises.Add(exercise);
            }
            else if (names.Count > 0)
            {
                return fault;
            }
            else
            {
                leftOut.Add(new LeftOutPiece(name, fault.ToString()));
            }
        }

        return SameName(exercises) ?? new PreparingSource(exercises.ToImmutable(), leftOut.ToImmutable());
    }

    private static Outcome<(string Name, ImmutableArray<Recipe> Recipes)> Forms(
        string name,
        Terminal terminal
    )
    {
        if (Library.OfFamily(name) is not { IsEmpty: false } forms || File.Exists(name))
        {
            return ExerciseSource
                .Find(name, terminal)
                .Then<(string, ImmutableArray<Recipe>)>(source => (source.Name, [source.Recipe]));
        }

        var usual = forms.Where(form => form.Form == UsualForm).ToImmutableArray();
        return (
            name,
            [
                .. (usual.IsEmpty ? forms : usual).SelectMany(form =>
                    new[] { FirstStroke.Down, FirstStroke.Up }.Select(first =>
                        form.Recipe with
                        {
                            Picking = form.Recipe.Picking with { First = first },
                        }
                    )
                ),
            ]
        );
    }

    // Moves can be compared only on one instrument and under one technique: those of the piece.
    private static Outcome<PreparingExercise> Played(
        string name,
        ImmutableArray<Recipe> recipes,
        Recipe piece,
        Player player
    )
    {
        var takes = ImmutableArray.CreateBuilder<Realization>(recipes.Length);
        foreach (var recipe in recipes)
        {
            var plan = recipe.Picking with
            {
                Technique = piece.Picking.Technique,
                Fingers = piece.Picking.Fingers,
            };
            var played = LineBuilder
                .Build(RecipeChange.Picked(recipe with { Instrument = piece.Instrument }, plan))
                .Then(line => Realizer.Realize(line, player));
            if (!played.TryGet(out var take, out var fault))
            {
                return fault with { Where = $"{name}: {fault.Where}".TrimEnd(':', ' ') };
            }

            takes.Add(take);
        }

        return new PreparingExercise(name, takes.MoveToImmutable());
    }

    private static Outcome<PreparingSource>? SameName(IEnumerable<PreparingExercise> exercises) =>
        exercises
            .GroupBy(exercise => exercise.Name)
            .Where(same => same.Count() > 1)
            .Select(same =>
                (Outcome<PreparingSource>)
                    new Fault(
                        $"two exercises are called {Quote.Short(same.Key)}",
                        "--with",
                        "another id in one of the files"
                    )
            )
            .FirstOrDefault();
}
