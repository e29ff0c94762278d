using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Repertoire;

/// <summary>An exercise that may prepare a piece, as it is played.</summary>
/// <param name="Name">Unlike any other's.</param>
/// <param name="Takes">The ways of playing it, such as both first strokes: what any of them holds counts as held.</param>
public sealed record PreparingExercise(string Name, ImmutableArray<Realization> Takes)
{
    /// <summary>The moves of all takes together.</summary>
    public Distribution<MoveClass> Moves { get; } =
        Distribution<MoveClass>.Of(Takes.SelectMany(MoveClass.In));

    /// <summary>Where its figures stand in a piece, once a note: the longest, of equally long ones the first take's.</summary>
    public ImmutableArray<Occurrence> In(Line piece) =>
        [
            .. Takes
                .SelectMany(take => Occurrences.Of(take.Line, piece))
                .GroupBy(found => found.Note)
                .Select(same => same.MaxBy(found => found.Notes)!)
                .OrderBy(found => found.Note),
        ];
}
