using Passagework.Engraving.Drawing;
using SkiaSharp;

namespace Passagework.Engraving.Fonts;

/// <summary>The shape of a glyph in font units, y downwards, with the origin on the baseline.</summary>
internal sealed class Outline
{
    private readonly Lazy<string> _data;

    public Outline(SKPath path)
    {
        Path = path;
        var bounds = path.TightBounds;
        Ink = path.IsEmpty ? null : new Box(bounds.Left, bounds.Top, bounds.Right, bounds.Bottom);
        _data = new(() => OutlineData.Of(path));
    }

    /// <summary>The contours.</summary>
    public SKPath Path { get; }

    /// <summary>The tight box around them; null for a space.</summary>
    public Box? Ink { get; }

    /// <summary>The contours as SVG path data.</summary>
    public string Data => _data.Value;
}
