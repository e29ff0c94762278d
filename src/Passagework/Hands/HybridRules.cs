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

    public override bool MayBegin(StrokeState state, long slot) => state.Action == first;

    public override bool MayFollow(StrokeState from, StrokeState to, StrokeStep step) => CanFollow(from, to);

    // A finger leaves the plectrum where it is.
    public override bool CanFollow(StrokeState from, StrokeState to) =>
        IsPick(to) || to.Anchor == from.Anchor;

    public override Demand Between(StrokeState from, StrokeState to, StrokeStep step)
    {
        if (IsPick(to))
        {
            return IsPick(from)
                ? moves.Between(from, to)
                : Demand
                    .Of(Basis.FingerAfterPick, 1)
                    .Plus(Basis.PickCross, moves.StringBits(to.Anchor - from.Anchor));
        }

        return to.Action == from.Action
            ? Demand.Of(Basis.PluckAgain, 1)
            : Demand.Of(Basis.FingerAfterPick, 1);
    }

    private static bool IsPick(StrokeState state) => state.Action is Stroke.Down or Stroke.Up;
}
