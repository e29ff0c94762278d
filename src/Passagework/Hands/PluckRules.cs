using System.Collections.Immutable;
using Passagework.Exercises;
using static Passagework.Hands.HandConstants;

namespace Passagework.Hands;

/// <summary>Fingers only: index on the anchor string, middle and ring towards the floor, thumb towards the ceiling.</summary>
/// <remarks>The rules are classical practice as listed by Dubey, Skarha and Taylor 2018; the times are assumed.</remarks>
internal abstract class PluckRules(PlectrumMoves moves, int strings) : StrokeRules
{
    protected int Strings { get; } = strings;

    public override Demand Between(StrokeState from, StrokeState to, StrokeStep step)
    {
        var demand = Turn(from, to);
        var moved = Math.Abs(to.Anchor - from.Anchor);
        if (moved > 0)
        {
            demand = demand
                .Plus(Basis.PluckCross, moves.StringBits(moved))
                .Plus(Basis.Alternation, moved * AnchorStepShare);
        }

        return demand;
    }

    /// <summary>The finger's resting places: the anchor for a string that the finger plays on it.</summary>
    protected IEnumerable<StrokeState> On(Stroke finger, int stringNumber)
    {
        if (finger == Stroke.Thumb)
        {
            return Enumerable
                .Range(1, stringNumber - 1)
                .Select(anchor => new StrokeState(finger, stringNumber, anchor));
        }

        var rest = stringNumber + Rank(finger);
        var gathered = new StrokeState(finger, stringNumber, stringNumber);
        return rest > stringNumber && rest <= Strings
            ? [gathered, new StrokeState(finger, stringNumber, rest)]
            : [gathered];
    }

    // Of several fingers at once: one that plays again sets the time, a thumb after the others; else the slowest pair.
    private Demand Turn(StrokeState from, StrokeState to)
    {
        var pairs = from.Parts()
            .SelectMany(one => to.Parts().Select(other => (From: one, To: other)))
            .ToList();
        var again = pairs.FindAll(pair => pair.From.Action == pair.To.Action);
        if (again.Exists(pair => pair.To.Action != Stroke.Thumb))
        {
            return Demand.Of(Basis.PluckAgain, 1);
        }

        return again is [var thumb, ..]
            ? Demand
                .Of(Basis.PluckAgain, ThumbAgainFactor)
                .Plus(Basis.PluckCross, moves.StringBits(thumb.To.String - thumb.From.String))
            : Demand.Of(Basis.Alternation, pairs.Max(pair => AlternationFactor(pair.From, pair.To)));
    }

    private static double AlternationFactor(StrokeState from, StrokeState to)
    {
        if (from.Action == Stroke.Thumb || to.Action == Stroke.Thumb)
        {
            return ThumbFingerFactor;
        }

        var ring = Rank(from.Action) + Rank(to.Action) == Rank(Stroke.Middle) + Rank(Stroke.Ring);
        return (ring ? RingFingerFactor : 1) * (IsBackward(from, to) ? BackwardCrossingFactor : 1);
    }

    /// <summary>Whether, of two different fingers, the one that rests nearer the ceiling plays nearer the floor.</summary>
    internal static bool IsBackward(StrokeState from, StrokeState to)
    {
        var (low, high) = Rank(from.Action) < Rank(to.Action) ? (from, to) : (to, from);
        return low.String < high.String;
    }

    // Strings towards the floor from the anchor at which the finger rests.
    private static int Rank(Stroke finger) => finger - Stroke.Index;
}

/// <summary>Thumb and three fingers, chosen freely.</summary>
internal sealed class PimaRules(PlectrumMoves moves, int strings) : PluckRules(moves, strings)
{
    private static readonly ImmutableArray<Stroke> Fingers =
    [
        Stroke.Thumb,
        Stroke.Index,
        Stroke.Middle,
        Stroke.Ring,
    ];

    public override IEnumerable<StrokeState> States(int stringNumber) =>
        Fingers.SelectMany(finger => On(finger, stringNumber));

    /// <summary>Fingers keep their order over the strings; the thumb may take the one nearest the ceiling.</summary>
    public override IEnumerable<StrokeState> ChordStates(ImmutableArray<int> strings)
    {
        var order = strings.OrderDescending().ToImmutableArray();
        return Choices(order.Length, Fingers)
            .SelectMany(fingers =>
            {
                var first = fingers[0] == Stroke.Thumb ? 1 : 0;
                return On(fingers[first], order[first])
                    .Select(rest => rest.Anchor)
                    .Where(anchor => first == 0 || anchor < order[0])
                    .Select(anchor => StruckChord.Plucked(strings, fingers, anchor));
            });
    }

    private static IEnumerable<ImmutableArray<Stroke>> Choices(int count, ImmutableArray<Stroke> from) =>
        count == 0
            ?
            [
                [],
            ]
            : from.SelectMany(
                (finger, index) =>
                    Choices(count - 1, from[(index + 1)..]).Select(rest => rest.Insert(0, finger))
            );

    public override bool MayBegin(StrokeState state, long slot) => true;

    public override bool MayFollow(StrokeState from, StrokeState to, StrokeStep step) => true;
}

/// <summary>Two fingers strictly in turn; a phrase after a long rest begins with the first-named.</summary>
internal sealed class PairRules : PluckRules
{
    private readonly Stroke _first;
    private readonly Stroke _second;

    public PairRules(PlectrumMoves moves, int strings, FingerOrder order)
        : base(moves, strings) =>
        (_first, _second) = order switch
        {
            FingerOrder.IndexMiddle => (Stroke.Index, Stroke.Middle),
            FingerOrder.MiddleRing => (Stroke.Middle, Stroke.Ring),
            _ => (Stroke.Thumb, Stroke.Index),
        };

    public override IEnumerable<StrokeState> States(int stringNumber)
    {
        // In the pair of thumb and index the thumb plays on the anchor too.
        var onAnchor =
            _first == Stroke.Thumb
                ? [new StrokeState(Stroke.Thumb, stringNumber, stringNumber)]
                : Array.Empty<StrokeState>();
        return onAnchor.Concat(On(_first, stringNumber)).Concat(On(_second, stringNumber));
    }

    /// <summary>Two fingers strictly in turn have no way to pluck at once.</summary>
    public override IEnumerable<StrokeState> ChordStates(ImmutableArray<int> strings) => [];

    public override bool MayBegin(StrokeState state, long slot) => state.Action == _first;

    public override bool MayFollow(StrokeState from, StrokeState to, StrokeStep step) =>
        step.Restarts ? MayBegin(to, step.Slot) : to.Action != from.Action;
}
