using System.Collections.Immutable;

namespace Passagework.Repertoire;

/// <summary>How much of a piece an exercise holds.</summary>
/// <param name="Exercise">Its name.</param>
/// <param name="Share">Share of the piece's moves whose kind it holds, 0 to 1; null in a piece without moves.</param>
public sealed record ExerciseCoverage(string Exercise, double? Share);

/// <summary>A figure of an exercise in a piece.</summary>
/// <param name="Exercise">Name of the exercise.</param>
/// <param name="Found">Where it stands.</param>
public sealed record ExerciseOccurrence(string Exercise, Occurrence Found);

/// <summary>What prepares a piece, and what in it wants preparing.</summary>
/// <example>
/// <c>Preparation.Of(piece, exercises, PieceCollection.BuiltIn(player, Technique.Alternate).OrThrow())</c>
/// </example>
public sealed record Preparation
{
    /// <summary>Kinds of moves that are named as hardest, rarest or held by no exercise.</summary>
    public const int NamedMoves = 5;

    private Preparation() { }

    /// <summary>The piece.</summary>
    public required Piece Piece { get; init; }

    /// <summary>The kinds of moves that leave least time to spare, hardest first.</summary>
    public required ImmutableArray<NotableMove> Hardest { get; init; }

    /// <summary>The kinds of moves that are least common in other music, rarest first.</summary>
    public required ImmutableArray<RareMove> Rarest { get; init; }

    /// <summary>Pieces that they were looked for in; the piece itself is not one of them.</summary>
    public required int OtherPieces { get; init; }

    /// <summary>What each exercise holds, most first, then by name.</summary>
    public required ImmutableArray<ExerciseCoverage> Coverage { get; init; }

    /// <summary>The fewest exercises that hold, between them, all that any of them holds.</summary>
    public required CoveringSet Smallest { get; init; }

    /// <summary>Share of the piece's moves that those hold together; null in a piece without moves.</summary>
    public required double? Together { get; init; }

    /// <summary>Kinds of moves worth an exercise that no exercise holds, the most frequent first, then the hardest.</summary>
    public required ImmutableArray<NotableMove> Uncovered { get; init; }

    /// <summary>Where figures of the exercises stand, exercise by exercise in the order given, in the order of the piece.</summary>
    public required ImmutableArray<ExerciseOccurrence> Occurrences { get; init; }

    /// <summary>Looks a piece through.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="exercises">What may prepare it, played by the same player with the same technique; names all different.</param>
    /// <param name="music">Other music for the same, in which rare moves are looked for; the piece may be in it.</param>
    /// <param name="stop">Ends the search for the smallest set early.</param>
    public static Preparation Of(
        Piece piece,
        IReadOnlyList<PreparingExercise> exercises,
        PieceCollection music,
        CancellationToken stop = default
    )
    {
        var smallest = CoveringSet.Of(
            piece.Classes,
            exercises.Select(exercise => (exercise.Name, exercise.Moves)),
            stop: stop
        );
        var taken = exercises.Where(exercise => smallest.Exercises.Contains(exercise.Name));
        var others = music.Without(piece.Line);
        return new Preparation
        {
            Piece = piece,
            Hardest = NotableMoves.Hardest(piece, NamedMoves),
            Rarest =
            [
                .. NotableMoves
                    .Rarest(piece, others.Moves, NamedMoves)
                    .Select(rare => new RareMove(rare, others.Moves.CountOf(rare.Move.Class))),
            ],
            OtherPieces = others.Count,
            Coverage = [.. CoverageBy(piece, exercises)],
            Smallest = smallest,
            Together = Repertoire.Coverage.Of(
                piece.Classes,
                Distribution<MoveClass>.Together(taken.Select(exercise => exercise.Moves))
            ),
            Uncovered = NotableMoves.Most(piece, smallest.Missing),
            Occurrences = [.. exercises.SelectMany(exercise => Found(exercise, piece))],
        };
    }

    private static IEnumerable<ExerciseCoverage> CoverageBy(
        Piece piece,
        IReadOnlyList<PreparingExercise> exercises
    ) =>
        exercises
            .Select(exercise => new ExerciseCoverage(
                exercise.Name,
                Repertoire.Coverage.Of(piece.Classes, exercise.Moves)
            ))
            .OrderByDescending(held => held.Share)
            .ThenBy(held => held.Exercise, StringComparer.Ordinal);

    private static IEnumerable<ExerciseOccurrence> Found(PreparingExercise exercise, Piece piece) =>
        exercise.In(piece.Line).Select(found => new ExerciseOccurrence(exercise.Name, found));
}
