using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace Passagework.Engraving.Drawing;

/// <summary>Puts what was drawn at its own origin somewhere else.</summary>
public static class Placing
{
    /// <summary>The same mark further right and down.</summary>
    public static Mark Moved(this Mark mark, double right, double down) =>
        mark switch
        {
            GlyphMark glyph => glyph with { At = glyph.At.Moved(right, down) },
            LineMark line => line with
            {
                From = line.From.Moved(right, down),
                To = line.To.Moved(right, down),
            },
            CurveMark curve => curve with
            {
                From = curve.From.Moved(right, down),
                Lean = curve.Lean.Moved(right, down),
                LeanBack = curve.LeanBack.Moved(right, down),
                To = curve.To.Moved(right, down),
            },
            TextMark text => text with { At = text.At.Moved(right, down) },
            PolygonMark polygon => polygon with { Corners = Moved(polygon.Corners, right, down) },
            CircleMark circle => circle with { Centre = circle.Centre.Moved(right, down) },
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    private static ImmutableArray<Point> Moved(ImmutableArray<Point> corners, double right, double down)
    {
        var moved = new Point[corners.Length];
        for (var i = 0; i < moved.Length; i++)
        {
            moved[i] = corners[i].Moved(right, down);
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(moved);
    }

    /// <summary>The same mark under a longer name, where a page holds several pictures.</summary>
    public static Mark Named(this Mark mark, string prefix) => mark with { Id = prefix + mark.Id };
}
