using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Hands;

/// <summary>Plectrum and fingers: middle and ring pluck strings nearer the floor than the plectrum's.</summary>
internal sealed class HybridRules(PlectrumMoves moves, Stroke first, int strings) : StrokeRules
{
    public override IEnumerable<StrokeState> States(int stringNumber)
    {
        yield return new StrokeState(Stroke.Down, stringNumber, stringNumber);
        yield return new StrokeState(Stroke.Up, stringNumber, stringNumber);
        for (var pick = stringNumber + 1; pick <= strings; pick++)
        {
            yield return new StrokeState(Stroke.Middle, stringNumber, pick);
        }

        for (var pick = stringNumber + 2; pick <= strings; pick++)
        {
            yield return new StrokeState(Stroke.Ring, stringNumber, pick);
        }
    }

    /// <summary>A brush, or the plectrum on the string nearest the ceiling and a finger on each of the others.</summary>
    public override IEnumerable<StrokeState> ChordStates(ImmutableArray<int> strings)
    {
        var order = strings.OrderDescending().ToList();
        ImmutableArray<Stroke>[] actors = order switch
        {
            [var pick, var other] when other <= pick - 2 =>
            [
                [Stroke.Down, Stroke.Middle],
                [Stroke.Down, Stroke.Ring],
            ],
            [_, _] =>
            [
                [Stroke.Down, Stroke.Middle],
            ],
            [_, _, _] =>
            [
                [Stroke.Down, Stroke.Middle, Stroke.Ring],
            ],
            _ => [],
        };
        return StruckChord
            .Brushes(strings)
            .Concat(actors.Select(each => StruckChord.Plucked(strings, each, order[0])));
    }

    public override bool MayBegin(StrokeState state, long slot) =>
        (state.IsPicked ? state.Action : Beginning(state)) == first;

    public override bool MayFollow(StrokeState from, StrokeState to, StrokeStep step) => CanFollow(from, to);

    // A finger alone leaves the plectrum where it is.
    public override bool CanFollow(StrokeState from, StrokeState to) =>
        to.IsPicked || to.Chord is not null || to.Anchor == from.Anchor;

    public override Demand Between(StrokeState from, StrokeState to, StrokeStep step)
    {
        if (to.IsPicked && from.IsPicked)
        {
            return moves.Between(from, to);
        }

        var again = Fingers(from).Intersect(Fingers(to)).Any();
        var demand = Demand.Of(again ? Basis.PluckAgain : Basis.FingerAfterPick, 1);
        var pick = to.IsPicked ? to.Entry : to.Anchor;
        return demand.Plus(Basis.PickCross, moves.StringBits(pick - from.Anchor));
    }

    private static IEnumerable<Stroke> Fingers(StrokeState state) =>
        state.Parts().Select(part => part.Action).Where(action => action > Stroke.Up);

    // A chord shared by plectrum and fingers begins with a down-stroke; a finger alone is no stroke to begin with.
    private static Stroke Beginning(StrokeState state) => state.Chord is null ? state.Action : Stroke.Down;
}
