using System.Collections.Immutable;
using System.Text;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;

namespace Passagework.Engraving.Screens;

/// <summary>An unseen ring about every place of a neck, so that a page can show which one sounds.</summary>
internal static class NeckPlaces
{
    private const string Dot = "dot-";
    private const double AboutPx = 3;

    /// <summary>One circle for each place, with the place in <c>data-place</c>; nothing for a picture without a neck.</summary>
    public static void Write(StringBuilder svg, ImmutableArray<Mark> marks, double pxPerMm)
    {
        var dots = marks.Where(mark => mark is CircleMark or PolygonMark && IsDot(mark)).ToList();
        if (dots.Count == 0)
        {
            return;
        }

        svg.Append("<g class=\"pw-places\" fill=\"none\" pointer-events=\"none\">");
        foreach (var dot in dots)
        {
            var (centre, radius) = Round(dot);
            svg.Append("<circle").Attribute("data-place", dot.Id[Dot.Length..]);
            svg.Append(" cx=\"").Number(centre.X * pxPerMm, CompactSvg.PxPlaces);
            svg.Append("\" cy=\"").Number(centre.Y * pxPerMm, CompactSvg.PxPlaces);
            svg.Append("\" r=\"").Number((radius * pxPerMm) + AboutPx, CompactSvg.PxPlaces).Append("\"/>");
        }

        svg.Append("</g>");
    }

    private static bool IsDot(Mark mark) =>
        mark.Kind.StartsWith("dot-played", StringComparison.Ordinal)
        || mark.Kind.StartsWith("dot-hollow", StringComparison.Ordinal);

    private static (Point Centre, double RadiusMm) Round(Mark dot)
    {
        if (dot is CircleMark circle)
        {
            return (circle.Centre, circle.RadiusMm + (circle.OutlineMm / 2));
        }

        // A root is square: the ring goes through its corners.
        var square = (PolygonMark)dot;
        var (first, opposite) = (square.Corners[0], square.Corners[2]);
        return (
            new Point((first.X + opposite.X) / 2, (first.Y + opposite.Y) / 2),
            Math.Sqrt(2) * ((Math.Abs(opposite.X - first.X) + square.OutlineMm) / 2)
        );
    }
}
