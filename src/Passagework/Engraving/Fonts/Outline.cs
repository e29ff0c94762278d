using Passagework.Engraving.Drawing;
using SkiaSharp;

namespace Passagework.Engraving.Fonts;

/// <summary>The shape of a glyph in font units, y downwards, with the origin on the baseline.</summary>
/// <param name="Path">The contours.</param>
/// <param name="Ink">The tight box around them; null for a space.</param>
internal sealed record Outline(SKPath Path, Box? Ink)
{
    public static Outline Of(SKPath path)
    {
        var bounds = path.TightBounds;
        return new(path, path.IsEmpty ? null : new Box(bounds.Left, bounds.Top, bounds.Right, bounds.Bottom));
    }
}
