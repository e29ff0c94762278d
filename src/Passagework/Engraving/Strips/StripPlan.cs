using System.Collections.Immutable;
using Passagework.Hands;

namespace Passagework.Engraving.Strips;

/// <summary>What the strips of all systems and their key share.</summary>
/// <param name="TempoBpm">Felt beats a minute.</param>
/// <param name="Demands">What the move to each note asks.</param>
/// <param name="Moves">The signs of the move to each note.</param>
/// <param name="Times">The time there is for it.</param>
/// <param name="Scale">How high that is.</param>
internal sealed record StripPlan(
    double TempoBpm,
    ImmutableArray<MoveDemand> Demands,
    ImmutableArray<StripMove> Moves,
    MoveTimes Times,
    StripScale Scale
)
{
    public static StripPlan Of(Measurement measured, double tempoBpm)
    {
        var times = MoveTimes.Of(measured.Realization, tempoBpm);
        return new StripPlan(
            tempoBpm,
            measured.Demands,
            StripMoves.Of(measured.Realization),
            times,
            StripScale.Of(measured.Demands, times)
        );
    }

    /// <summary>The signs that occur.</summary>
    public ImmutableArray<MoveKind> Kinds => [.. Moves.SelectMany(move => move.Kinds()).Distinct().Order()];

    /// <summary>Whether a figure rests mostly on assumed values.</summary>
    public bool IsGuessed => Demands.Any(demand => demand.FrettingIsAssumed || demand.PickingIsAssumed);

    /// <summary>Whether a hand needs more time than there is.</summary>
    public bool IsExceeded =>
        Demands
            .Where(
                (demand, note) =>
                    demand.FrettingMs > Times.Fretting[note] || demand.PickingMs > Times.Picking[note]
            )
            .Any();
}
