using System.Collections.Immutable;

namespace Passagework.Engraving.Drawing;

/// <summary>A picture that stands inside a page: marks from its own upper left corner, and how much room they take.</summary>
/// <param name="WidthMm">Width; all ink lies inside.</param>
/// <param name="HeightMm">Height; all ink lies inside.</param>
/// <param name="Marks">What is drawn.</param>
public sealed record Figure(double WidthMm, double HeightMm, ImmutableArray<Mark> Marks)
{
    /// <summary>How to read the picture, in sentences to be printed beside it.</summary>
    public string Caption { get; init; } = "";

    /// <summary>What is in it, in one sentence for those who do not see it.</summary>
    public string Description { get; init; } = "";

    /// <summary>The marks with the picture's upper left corner at a point of a page.</summary>
    /// <param name="corner">Where the corner goes.</param>
    /// <param name="prefix">Put before each name, so that names stay apart on the page.</param>
    public ImmutableArray<Mark> At(Point corner, string prefix = "") =>
        [.. Marks.Select(mark => mark.Moved(corner.X, corner.Y).Named(prefix))];

    /// <summary>The picture as a page of its own.</summary>
    public Page ToPage() => new(WidthMm, HeightMm, Marks) { Description = Description };
}
