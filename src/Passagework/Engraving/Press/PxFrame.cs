using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Press;

/// <summary>How millimetres of marks lie on a screen.</summary>
/// <param name="PxPerMm">Pixels in a millimetre.</param>
/// <param name="LeftPx">Where 0 lies, from the left edge of the picture.</param>
internal readonly record struct PxFrame(double PxPerMm, double LeftPx = 0)
{
    /// <summary>A place along the picture, in pixels.</summary>
    public double X(double mm) => (mm * PxPerMm) + LeftPx;

    /// <summary>A height or length in pixels.</summary>
    public double Length(double mm) => mm * PxPerMm;

    /// <summary>A point in pixels.</summary>
    public Point At(Point mm) => new(X(mm.X), Length(mm.Y));
}
