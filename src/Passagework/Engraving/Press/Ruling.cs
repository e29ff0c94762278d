using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Press;

/// <summary>
/// The lines of a ruled figure, each cut to the figure's shape, so that every back end only fills polygons. They rise to
/// the right at 45 degrees and are counted from the page's corner: figures side by side are ruled as one.
/// </summary>
internal static class Ruling
{
    /// <summary>Thickness of a line.</summary>
    public const double LineMm = 0.45;

    /// <summary>From the middle of one line to the middle of the next.</summary>
    public const double PitchMm = 1.2;

    private const int CircleCorners = 96;

    /// <summary>The lines inside a polygon, each as its corners.</summary>
    public static IEnumerable<List<Point>> Lines(IReadOnlyList<Point> corners)
    {
        // Along such a line x + y stays the same.
        var (step, half) = (PitchMm * Math.Sqrt(2), LineMm / 2 * Math.Sqrt(2));
        var first = (int)Math.Floor(corners.Min(Across) / step);
        var last = (int)Math.Ceiling(corners.Max(Across) / step);
        for (var line = first; line <= last; line++)
        {
            var (least, greatest) = ((line * step) - half, (line * step) + half);
            var cut = Cut(
                Cut(corners, corner => Across(corner) - least),
                corner => greatest - Across(corner)
            );
            if (cut.Count > 2)
                yield return cut;
        }
    }

    /// <summary>A circle as a polygon; the corners lie 0.05 % of the radius off it at most.</summary>
    public static List<Point> Corners(Point centre, double radiusMm) =>
        [
            .. Enumerable
                .Range(0, CircleCorners)
                .Select(i => Math.SinCos(2 * Math.PI * i / CircleCorners))
                .Select(turn => centre.Moved(radiusMm * turn.Cos, radiusMm * turn.Sin)),
        ];

    private static double Across(Point corner) => corner.X + corner.Y;

    // The part of a polygon where a linear function is not negative (Sutherland and Hodgman 1974).
    private static List<Point> Cut(IReadOnlyList<Point> corners, Func<Point, double> inside)
    {
        var kept = new List<Point>();
        for (var i = 0; i < corners.Count; i++)
        {
            var (from, to) = (corners[i], corners[(i + 1) % corners.Count]);
            var (before, after) = (inside(from), inside(to));
            if (before >= 0)
                kept.Add(from);
            if (before >= 0 != after >= 0)
            {
                var share = before / (before - after);
                kept.Add(from.Moved((to.X - from.X) * share, (to.Y - from.Y) * share));
            }
        }

        return kept;
    }
}
