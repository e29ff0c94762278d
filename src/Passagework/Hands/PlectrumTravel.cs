using Passagework.Exercises;

namespace Passagework.Hands;

/// <summary>What the plectrum does between two strokes.</summary>
/// <param name="Millimetres">Distance from the end of the one to the start of the next.</param>
/// <param name="Hops">Strings lying strictly between these two points.</param>
internal readonly record struct PlectrumTravel(double Millimetres, int Hops)
{
    /// <summary>From the geometry of a stroke: it starts and ends half a depth beside its string.</summary>
    public static PlectrumTravel Of(StrokeState from, StrokeState to, double spacingMm)
    {
        var end = End(from.Exit, from.Action, spacingMm, 1);
        var start = End(to.Entry, to.Action, spacingMm, -1);
        var (low, high) = end < start ? (end, start) : (start, end);
        var hops = (int)Math.Ceiling(high / spacingMm) - (int)Math.Floor(low / spacingMm) - 1;
        return new PlectrumTravel(high - low, Math.Max(0, hops));
    }

    // Across the strings, positive towards the floor; string 8 lies at 0.
    private static double End(int stringNumber, Stroke action, double spacingMm, int side)
    {
        var direction = action == Stroke.Down ? 1 : -1;
        return ((8 - stringNumber) * spacingMm) + (side * direction * HandConstants.StrokeHalfDepthMm);
    }
}
