namespace Passagework.Engraving.Drawing;

/// <summary>An upright rectangle on a page in millimetres; it holds the ink of a mark.</summary>
public readonly record struct Box(double Left, double Top, double Right, double Bottom)
{
    /// <summary>From left to right, never below 0.</summary>
    public double Width => Right - Left;

    /// <summary>From top to bottom, never below 0.</summary>
    public double Height => Bottom - Top;

    /// <summary>The smallest box that holds both.</summary>
    public Box With(Box other) =>
        new(
            Math.Min(Left, other.Left),
            Math.Min(Top, other.Top),
            Math.Max(Right, other.Right),
            Math.Max(Bottom, other.Bottom)
        );

    /// <summary>The box grown by a margin on every side.</summary>
    public Box Grown(double margin) => new(Left - margin, Top - margin, Right + margin, Bottom + margin);

    /// <summary>The box moved right and down.</summary>
    public Box Moved(double right, double down) =>
        new(Left + right, Top + down, Right + right, Bottom + down);

    /// <summary>Whether the two share some area; touching edges do not count.</summary>
    public bool Overlaps(Box other) =>
        Left < other.Right && other.Left < Right && Top < other.Bottom && other.Top < Bottom;

    /// <summary>Whether the other lies wholly inside or on the edge.</summary>
    public bool Holds(Box other) =>
        Left <= other.Left && Top <= other.Top && other.Right <= Right && other.Bottom <= Bottom;
}
