using Passagework.Foundation;

namespace Passagework.Engraving.Scores;

/// <summary>How much room a note takes on the line.</summary>
/// <remarks>
/// Space grows with the square root of the length: 3.5 staff spaces for a quarter, √2 for every doubling. Square-root and
/// logarithmic laws are both in use; this one is chosen by us.
/// </remarks>
internal static class SpaceLaw
{
    /// <summary>Staff spaces from one quarter to the next.</summary>
    public const double Quarter = 3.5;

    /// <summary>Room that is left after a glyph, whatever the length of its note.</summary>
    public const double LeastGap = 0.4;

    /// <summary>Room between two words that are said one after the other.</summary>
    public const double WordGap = 0.8;

    /// <summary>Natural distance to the next note, in staff spaces.</summary>
    /// <param name="length">Sounding length as a fraction of a whole note.</param>
    public static double Width(Fraction length) => Quarter * Math.Sqrt(4 * length.ToDouble());
}
