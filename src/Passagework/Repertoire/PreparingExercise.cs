using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Repertoire;

/// <summary>An exercise that may prepare a piece, as it is played.</summary>
/// <param name="Name">Unlike any other's.</param>
/// <param name="Takes">The ways of playing it, such as both first strokes: what any of them holds counts as held.</param>
public sealed record PreparingExercise(string Name, ImmutableArray<Realization> Takes)
{
    /// <summary>The moves of all takes together.</summary>
    public Distribution<MoveClass> Moves { get; } =
        Distribution<MoveClass>.Of(Takes.SelectMany(MoveClass.In));

    /// <summary>
    /// Plays an exercise on the instrument of a piece and with its technique, under which alone moves can be compared; refused
    /// when one of its forms can't be played so.
    /// </summary>
    /// <param name="name">Unlike any other's.</param>
    /// <param name="forms">The ideas; what any of them holds counts as held.</param>
    /// <param name="piece">The piece that it may prepare.</param>
    /// <param name="player">Whose hands play.</param>
    public static Outcome<PreparingExercise> Of(
        string name,
        IEnumerable<Recipe> forms,
        Piece piece,
        Player player
    )
    {
        var takes = ImmutableArray.CreateBuilder<Realization>();
        foreach (var form in forms)
        {
            if (!Played(form, piece.Line.Recipe, player).TryGet(out var take, out var fault))
            {
                return fault with { Where = $"{name}: {fault.Where}".TrimEnd(':', ' ') };
            }

            takes.Add(take);
        }

        return new PreparingExercise(name, takes.ToImmutable());
    }

    /// <summary>Where its figures stand in a piece, once a note: the longest, of equally long ones the first take's.</summary>
    public ImmutableArray<Occurrence> In(Line piece) =>
        [
            .. Takes
                .SelectMany(take => Occurrences.Of(take.Line, piece))
                .GroupBy(found => found.Note)
                .Select(same => same.MaxBy(found => found.Notes)!)
                .OrderBy(found => found.Note),
        ];

    private static Outcome<Realization> Played(Recipe form, Recipe piece, Player player)
    {
        var plan = form.Picking with { Technique = piece.Picking.Technique, Fingers = piece.Picking.Fingers };
        return LineBuilder
            .Build(RecipeChange.Picked(form with { Instrument = piece.Instrument }, plan))
            .Then(line => Realizer.Realize(line, player));
    }
}
