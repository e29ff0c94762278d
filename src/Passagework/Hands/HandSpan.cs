using Passagework.Instrument;
using static Passagework.Hands.HandConstants;

namespace Passagework.Hands;

/// <summary>Where fingertips stand and how far two of them reach.</summary>
internal sealed class HandSpan(Geometry geometry, double handSize)
{
    /// <summary>Nominal contact point, just behind the wire; fret 1 or higher.</summary>
    public double TipMm(Place place) =>
        geometry.FretMm(place.String, place.Fret) - (ContactShare * geometry.GapMm(place.String, place.Fret));

    /// <summary>
    /// The time factor of two different fingers that hold two notes in one position: 1 within comfort, up to
    /// 1 + the stretch gain at the largest span. Null when the hand cannot: a higher-numbered finger on a lower fret,
    /// or even the least span, with all placement freedom used, is too wide.
    /// </summary>
    public double? StretchFactor(FretState one, FretState other)
    {
        var (lower, higher) = one.Finger < other.Finger ? (one, other) : (other, one);
        var (near, far) = (lower.Place, higher.Place);
        var largest = SpanMm(lower.Finger, higher.Finger) * handSize;
        if (far.Fret < near.Fret || LeastMm(near, far) > largest)
        {
            return null;
        }

        var comfort = ComfortShare * largest;
        var nominal = NominalMm(near, far);
        var stretch = Math.Clamp((nominal - comfort) / (largest - comfort), 0, 1);
        return 1 + (StretchGain * stretch * stretch);
    }

    /// <summary>Tip to tip with each tip at its nominal contact point.</summary>
    public double NominalMm(Place near, Place far) => TipMm(far) - TipMm(near);

    /// <summary>Tip to tip with all placement freedom used.</summary>
    public double LeastMm(Place near, Place far) =>
        geometry.FretMm(far.String, far.Fret - 1)
        + BehindLastFretMm
        - (geometry.FretMm(near.String, near.Fret) - BehindFretMm);
}
