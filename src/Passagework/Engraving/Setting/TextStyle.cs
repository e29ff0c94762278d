using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Setting;

/// <summary>How a piece of text is set.</summary>
/// <param name="Face">The face.</param>
/// <param name="SizeMm">Height of the em.</param>
/// <param name="LeadingMm">From one baseline to the next.</param>
public sealed record TextStyle(Face Face, double SizeMm, double LeadingMm)
{
    // Half the height of a capital letter in ems, so that lines stand in the middle of their leading; chosen by eye.
    private const double HalfCapital = 0.32;

    /// <summary>The face of weighed words.</summary>
    public Face Strong { get; init; } = Face.SansBold;

    /// <summary>What it is printed in.</summary>
    public Ink Ink { get; init; }

    /// <summary>Space added after each letter, in ems.</summary>
    public double TrackingEm { get; init; }

    /// <summary>From the top of a line to its baseline.</summary>
    public double BaselineMm => (LeadingMm / 2) + (HalfCapital * SizeMm);

    /// <summary>A style measured in printer's points, 72 to the inch.</summary>
    public static TextStyle InPoints(Face face, double size, double leading) =>
        new(face, size * PrintSizes.PointMm, leading * PrintSizes.PointMm);
}
