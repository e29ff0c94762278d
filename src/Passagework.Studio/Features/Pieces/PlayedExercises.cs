using Passagework.Foundation;
using Passagework.Repertoire;

namespace Passagework.Studio.Features.Pieces;

/// <summary>Exercises as they are played in a piece, with what they are called.</summary>
/// <param name="piece">The piece.</param>
internal sealed class PlayedExercises(Piece piece)
{
    private readonly Dictionary<string, PreparingExercises.Source> _sources = [];
    private readonly List<PreparingExercise> _exercises = [];
    private readonly List<string> _leftOut = [];

    /// <summary>The piece.</summary>
    public Piece Piece { get; } = piece;

    /// <summary>Those that can be played so.</summary>
    public IReadOnlyList<PreparingExercise> Exercises => _exercises;

    /// <summary>Those that can't, with why.</summary>
    public IReadOnlyList<string> LeftOut => _leftOut;

    /// <summary>Takes one in, or notes why it is left out.</summary>
    public void Add(PreparingExercises.Source source, Outcome<PreparingExercise> outcome)
    {
        if (outcome.TryGet(out var exercise, out var fault))
        {
            _sources.Add(source.Name, source);
            _exercises.Add(exercise);
        }
        else
        {
            _leftOut.Add($"{source.Title}: {fault.What}");
        }
    }

    /// <summary>One of them as the page shows it.</summary>
    public PreparingOne One(ExerciseCoverage coverage, Preparation preparation)
    {
        var source = _sources[coverage.Exercise];
        var moves = _exercises.Single(one => one.Name == coverage.Exercise).Moves;
        var whole = Piece
            .Moves.GroupBy(move => move.At.Bar)
            .Where(bar => bar.All(move => moves.CountOf(move.Class) > 0))
            .Select(bar => bar.Key);
        var figures = preparation
            .Occurrences.Where(found => found.Exercise == coverage.Exercise)
            .Select(found => found.Found.At.Bar);
        return new PreparingOne(
            source.Title,
            source.Url,
            (int)Math.Round(100 * (coverage.Share ?? 0)),
            PieceWords.Bars(whole),
            PieceWords.Bars(figures)
        );
    }
}
