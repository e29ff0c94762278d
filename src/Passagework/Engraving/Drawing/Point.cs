namespace Passagework.Engraving.Drawing;

/// <summary>A place on a page in millimetres, x to the right and y downwards from the upper left corner.</summary>
public readonly record struct Point(double X, double Y)
{
    /// <summary>The place so many millimetres further right and down.</summary>
    public Point Moved(double right, double down) => new(X + right, Y + down);
}
