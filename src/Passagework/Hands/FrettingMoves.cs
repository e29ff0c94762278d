using Passagework.Instrument;
using static Passagework.Hands.HandConstants;

namespace Passagework.Hands;

/// <summary>What one move of the fretting hand asks: the transition rules.</summary>
/// <remarks>
/// Every term is a time. The frame (a state for each note, a cost on each arc) follows Sayegh 1989; the three
/// separate terms for place, shift and span follow Heijink and Meulenbroek 2002; Shannon's form of Fitts' law gives
/// the distances (MacKenzie 1992). Sizes are in the parameter file.
/// </remarks>
internal sealed class FrettingMoves
{
    private readonly Geometry _geometry;
    private readonly HandSpan _span;

    public FrettingMoves(Geometry geometry, double handSize)
    {
        _geometry = geometry;
        _span = new HandSpan(geometry, handSize);
    }

    /// <summary>The demand of going from one state to the next; null when no hand can do it.</summary>
    public Demand? Between(FretState from, FretState to, Reach reach)
    {
        if (to.IsOpen)
        {
            return to.Position == from.Position ? ToOpen(from, to, reach) : null;
        }

        if (Action(from, to, reach) is not { } action)
        {
            return null;
        }

        return Stretch(from, to) is { } stretch
            ? WithShift(action.Times(stretch * Posture(to)), from, to)
            : null;
    }

    /// <summary>The action alone, before posture and shift; none for a repeated note. Null when impossible.</summary>
    public Demand? Action(FretState from, FretState to, Reach reach)
    {
        if (to.IsOpen)
        {
            return ToOpen(from, to, reach);
        }

        var sameString = from.Place.String == to.Place.String;
        if (
            reach == Reach.Slid
            && !(sameString && from.Finger == to.Finger && from.Deviation == to.Deviation)
        )
        {
            return null;
        }

        if (from.IsOpen)
        {
            return Press(to, sameString, reach).Plus(Basis.Cross, CrossBits(from, to));
        }

        return sameString ? AlongString(from, to, reach) : AcrossStrings(from, to, reach);
    }

    /// <summary>The travel that a finger makes from one place to another, in bits (Shannon's form).</summary>
    public double TravelBits(Place from, Place to)
    {
        var across = AcrossMm(from.String, to);
        var along = _span.TipMm(to) - _span.TipMm(from);
        return Bits(Math.Sqrt((across * across) + (along * along)), PadHalfWidthMm);
    }

    /// <summary>The demand of a finger that comes back from one place to another while others play.</summary>
    public Demand Return(int finger, Place from, Place to) =>
        Demand.Of(Basis.Cycle + finger - 1, 1).Plus(Basis.Cross, TravelBits(from, to));

    private static double Bits(double distanceMm, double targetMm) => Math.Log2((distanceMm / targetMm) + 1);

    private static Demand ToOpen(FretState from, FretState to, Reach reach)
    {
        var lifts = !from.IsOpen && from.Place.String == to.Place.String;
        var factor = reach == Reach.Struck ? 1 : PullOffFactor;
        return lifts ? Demand.Of(Basis.Lift + from.Finger - 1, factor) : Demand.None;
    }

    private static Demand Press(FretState to, bool sameString, Reach reach)
    {
        var fromNowhere = reach != Reach.Struck && !sameString;
        return Demand.Of(Basis.Press + to.Finger - 1, fromNowhere ? HammerFromNowhereFactor : 1);
    }

    private static Demand? AlongString(FretState from, FretState to, Reach reach)
    {
        if (from.Finger == to.Finger)
        {
            var travelsAlong =
                reach is Reach.Slid || (reach is Reach.SlurredOrSlid && from.Deviation == to.Deviation);
            return from.Place.Fret == to.Place.Fret || travelsAlong
                ? Demand.None
                : Demand.Of(Basis.Cycle + to.Finger - 1, 1);
        }

        var lifts = to.Place.Fret < from.Place.Fret;
        return lifts
            ? Demand.Of(Basis.Lift + from.Finger - 1, reach == Reach.Struck ? 1 : PullOffFactor)
            : Press(to, sameString: true, reach);
    }

    private Demand AcrossStrings(FretState from, FretState to, Reach reach)
    {
        var neighbours = Math.Abs(from.Place.String - to.Place.String) == 1;
        var sameFret = from.Place.Fret == to.Place.Fret;
        if (from.Finger == to.Finger)
        {
            return neighbours && sameFret
                ? Demand.Of(Basis.Roll + to.Finger - 1, 1)
                : Demand
                    .Of(Basis.Cycle + to.Finger - 1, 1)
                    .Plus(Basis.Cross, TravelBits(from.Place, to.Place));
        }

        var press = Press(to, sameString: false, reach);
        if (to.Finger < from.Finger)
        {
            press = press.Times(InwardFactor);
        }

        var whole = press.Plus(Basis.Cross, CrossBits(from, to));
        return neighbours && sameFret ? whole.Times(CrowdingFactor) : whole;
    }

    /// <summary>The factor of two fingers that hold both notes in one position; null when they can't.</summary>
    public double? Stretch(FretState from, FretState to) =>
        from.IsOpen || from.Finger == to.Finger || from.Position != to.Position
            ? 1
            : _span.StretchFactor(from, to);

    /// <summary>The factor of a finger that stands off its natural place.</summary>
    public static double Posture(FretState to) =>
        1 + ((to.IsExtension ? ExtensionGain : ContractionGain) * Math.Abs(to.Deviation));

    /// <summary>What moving the hand adds; none when it stays.</summary>
    public Demand Shift(FretState from, FretState to) => WithShift(Demand.None, from, to);

    private Demand WithShift(Demand demand, FretState from, FretState to)
    {
        if (from.Position == to.Position)
        {
            return demand;
        }

        var bits = ShiftBits(to.Place.String, from.Position, to.Position);
        var share = from.IsOpen ? ShiftAfterOpenFactor : 1;
        return demand.Plus(Basis.ShiftStart, share).Plus(Basis.ShiftSlope, share * bits);
    }

    private double ShiftBits(int stringNumber, int from, int to)
    {
        var distance = Math.Abs(_geometry.FretMm(stringNumber, to) - _geometry.FretMm(stringNumber, from));
        return Bits(distance, _geometry.GapMm(stringNumber, to) / 2);
    }

    private double CrossBits(FretState from, FretState to) =>
        Bits(AcrossMm(from.Place.String, to.Place), PadHalfWidthMm);

    private double AcrossMm(int fromString, Place to) =>
        Math.Abs(fromString - to.String) * _geometry.SpacingMm(to.String, to.Fret);
}
