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
            var found = CandidateSources
                .Find(name, terminal)
                .Then(source => PreparingExercise.Of(source.Id, source.Forms, piece, player));
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
