using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Hands;

/// <summary>What all techniques of the plectrum alone share: two strokes on every string.</summary>
internal abstract class PlectrumRules(PlectrumMoves moves) : StrokeRules
{
    protected PlectrumMoves Moves { get; } = moves;

    public override IEnumerable<StrokeState> States(int stringNumber) =>
        [
            new StrokeState(Stroke.Down, stringNumber, stringNumber),
            new StrokeState(Stroke.Up, stringNumber, stringNumber),
        ];

    public override IEnumerable<StrokeState> ChordStates(ImmutableArray<int> strings) =>
        StruckChord.Brushes(strings);

    public override Demand Between(StrokeState from, StrokeState to, StrokeStep step) =>
        Moves.Between(from, to);
}

/// <summary>Strictly down and up, whatever the strings; a phrase after a long rest begins with the first stroke.</summary>
internal sealed class AlternateRules(PlectrumMoves moves, Stroke first) : PlectrumRules(moves)
{
    public override bool MayBegin(StrokeState state, long slot) => state.Action == first;

    public override bool MayFollow(StrokeState from, StrokeState to, StrokeStep step) =>
        step.Restarts ? MayBegin(to, step.Slot) : to.Action != from.Action;
}

/// <summary>
/// Down and up on one string; between strings the stroke goes with the crossing. To and from a chord, which begins and ends
/// on different strings, either stroke may come.
/// </summary>
internal sealed class EconomyRules(PlectrumMoves moves, Stroke first) : PlectrumRules(moves)
{
    public override bool MayBegin(StrokeState state, long slot) => state.Action == first;

    public override bool MayFollow(StrokeState from, StrokeState to, StrokeStep step)
    {
        if (step.Restarts)
        {
            return MayBegin(to, step.Slot);
        }

        if (from.Chord is not null || to.Chord is not null)
        {
            return true;
        }

        return from.String == to.String
            ? to.Action != from.Action
            : to.Action == (to.String < from.String ? Stroke.Down : Stroke.Up);
    }
}

/// <summary>The hand swings on the grid of pulses; silent passes over rests and slurred notes.</summary>
internal sealed class MetricRules(PlectrumMoves moves, Stroke first) : PlectrumRules(moves)
{
    public override bool MayBegin(StrokeState state, long slot) => (state.Action == first) == (slot % 2 == 0);

    public override bool MayFollow(StrokeState from, StrokeState to, StrokeStep step) =>
        MayBegin(to, step.Slot);

    public override Demand Between(StrokeState from, StrokeState to, StrokeStep step) =>
        Moves.OnGrid(from, to, step.Slots);
}

/// <summary>Down-strokes only, or up-strokes only.</summary>
internal sealed class OneWayRules(PlectrumMoves moves, Stroke only) : PlectrumRules(moves)
{
    public override bool MayBegin(StrokeState state, long slot) => state.Action == only;

    public override bool MayFollow(StrokeState from, StrokeState to, StrokeStep step) => to.Action == only;
}

/// <summary>Any stroke anywhere after the first.</summary>
internal sealed class FreeRules(PlectrumMoves moves, Stroke first) : PlectrumRules(moves)
{
    public override bool MayBegin(StrokeState state, long slot) => state.Action == first;

    public override bool MayFollow(StrokeState from, StrokeState to, StrokeStep step) => true;
}
