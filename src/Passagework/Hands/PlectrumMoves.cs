using Passagework.Exercises;
using static Passagework.Hands.HandConstants;

namespace Passagework.Hands;

/// <summary>What one change of the plectrum asks, from the geometry of a stroke at the picking point.</summary>
/// <remarks>
/// A stroke starts and ends half a depth beside its string; between strokes the plectrum travels the rest and hops
/// over the strings between. Distances count in Shannon's form of Fitts' law (MacKenzie 1992).
/// </remarks>
internal sealed class PlectrumMoves(double spacingMm, Clear clear)
{
    /// <summary>The demand of one stroke after another.</summary>
    public Demand Between(StrokeState from, StrokeState to)
    {
        var change = StrokeChange.Of(from, to);
        var reach = change.Distance * spacingMm;
        var demand = change.Kind switch
        {
            ChangeKind.SameString => Demand.Of(Basis.HalfCycle, from.Action == to.Action ? 2 : 1),
            ChangeKind.SweepStep when change.Distance == 1 => Demand.Of(Basis.SweepStep, 1),
            ChangeKind.SweepStep => Crossing(1, reach - (2 * StrokeHalfDepthMm), 1),
            ChangeKind.Against => Crossing(2, reach + (2 * StrokeHalfDepthMm), 1),
            _ => Crossing(1, reach, SideFactor(change) * BlockFactor(from.Action)),
        };
        return WithBrush(demand, to);
    }

    /// <summary>The same where a steady grid drives the hand, <paramref name="slots"/> half-cycles later.</summary>
    public Demand OnGrid(StrokeState from, StrokeState to, int slots)
    {
        var change = StrokeChange.Of(from, to);
        var factor = from.Action == to.Action ? 1 : SideFactor(change) * BlockFactor(from.Action);
        var demand =
            change.Kind == ChangeKind.SameString
                ? Demand.Of(Basis.HalfCycle, slots)
                : Crossing(slots, change.Distance * spacingMm, factor);
        return WithBrush(demand, to);
    }

    /// <summary>Distance across the strings in bits; the target is half the spacing.</summary>
    public double Bits(double travelMm) => Math.Log2((travelMm / (spacingMm / 2)) + 1);

    /// <summary>Distance of a whole number of strings in bits.</summary>
    public double StringBits(int strings) => Bits(Math.Abs(strings) * spacingMm);

    // A chord sounds whole on its time, so the strings before the last are passed earlier, as in a rake.
    private static Demand WithBrush(Demand demand, StrokeState to) =>
        demand.Plus(Basis.SweepStep, BrushedStringShare * Math.Abs(to.Entry - to.Exit));

    private Demand Crossing(int halfCycles, double travelMm, double factor) =>
        Demand.Of(Basis.HalfCycle, halfCycles).Plus(Basis.PickCross, Bits(travelMm) * factor);

    private static double SideFactor(StrokeChange change) =>
        change.Kind == ChangeKind.Inside ? InsideFactor : 1;

    private double BlockFactor(Stroke before)
    {
        var blocked =
            (clear == Clear.AfterDown && before == Stroke.Up)
            || (clear == Clear.AfterUp && before == Stroke.Down);
        return blocked ? BlockedFactor : 1;
    }
}
