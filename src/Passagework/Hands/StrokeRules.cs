using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Hands;

/// <summary>A picking technique as a state machine: which strokes are possible, which may follow, what they ask.</summary>
internal abstract class StrokeRules
{
    /// <summary>All ways to strike a string; planners sort them in the order in which ties are broken.</summary>
    public abstract IEnumerable<StrokeState> States(int stringNumber);

    /// <summary>All ways to strike the strings of a chord at once; none where the technique has no way.</summary>
    /// <param name="strings">At least two, that of the highest tone first.</param>
    public abstract IEnumerable<StrokeState> ChordStates(ImmutableArray<int> strings);

    /// <summary>Whether the line, or a phrase after a long rest, may begin so.</summary>
    public abstract bool MayBegin(StrokeState state, long slot);

    /// <summary>Whether one stroke may follow another.</summary>
    public abstract bool MayFollow(StrokeState from, StrokeState to, StrokeStep step);

    /// <summary>Whether one state can follow another at all, also where a teacher has fixed the stroke.</summary>
    public virtual bool CanFollow(StrokeState from, StrokeState to) => true;

    /// <summary>What the second of two strokes asks.</summary>
    public abstract Demand Between(StrokeState from, StrokeState to, StrokeStep step);

    /// <summary>The rules of a technique with that first stroke.</summary>
    public static StrokeRules For(PickingPlan plan, Stroke first, PlectrumMoves moves, int strings) =>
        plan.Technique switch
        {
            Technique.Alternate or Technique.Legato => new AlternateRules(moves, first),
            Technique.Economy or Technique.Sweep => new EconomyRules(moves, first),
            Technique.Metric => new MetricRules(moves, first),
            Technique.AllDown => new OneWayRules(moves, Stroke.Down),
            Technique.AllUp => new OneWayRules(moves, Stroke.Up),
            Technique.Free => new FreeRules(moves, first),
            Technique.Hybrid => new HybridRules(moves, first, strings),
            Technique.Fingers when plan.Fingers == FingerOrder.Pima => new PimaRules(moves, strings),
            Technique.Fingers => new PairRules(moves, strings, plan.Fingers),
            Technique.Rake => new RakeRules(moves, first, strings),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
}
