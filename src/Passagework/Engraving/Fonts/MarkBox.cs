using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Fonts;

/// <summary>Where the ink of a mark lies.</summary>
public static class MarkBox
{
    /// <summary>The smallest upright box on the page that holds all the mark's ink, in millimetres.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A glyph is not in the music font.</exception>
    public static Box Of(Mark mark) =>
        mark switch
        {
            GlyphMark glyph => OfGlyph(glyph),
            LineMark line => OfLine(line),
            CurveMark curve => CurveShape.Of(curve).Ink,
            TextMark text => OfText(text),
            PolygonMark polygon => OfCorners(polygon.Corners).Grown(polygon.OutlineMm / 2),
            CircleMark circle => new Box(
                circle.Centre.X,
                circle.Centre.Y,
                circle.Centre.X,
                circle.Centre.Y
            ).Grown(circle.RadiusMm + (circle.OutlineMm / 2)),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>Where a text begins: the left end of its baseline, whatever its anchor.</summary>
    public static Point StartOf(TextMark text)
    {
        if (text.Anchor == Anchor.Start)
        {
            return text.At;
        }

        var width = TextFont.Width(text.Text, text.Face, text.SizeMm, text.TrackingEm);
        return text.At.Moved(text.Anchor == Anchor.Middle ? -width / 2 : -width, 0);
    }

    private static Box OfGlyph(GlyphMark mark)
    {
        var shape = MusicFont.Glyph(mark.CodePoint);
        return new Box(
            shape.Left * mark.SpaceMm,
            -shape.Top * mark.SpaceMm,
            shape.Right * mark.SpaceMm,
            -shape.Bottom * mark.SpaceMm
        ).Moved(mark.At.X, mark.At.Y);
    }

    private static Box OfLine(LineMark line)
    {
        var half = line.WidthMm / 2;
        var ends = OfCorners([line.From, line.To]);
        if (line.RoundEnds)
        {
            return ends.Grown(half);
        }

        // Cut square at the points: the corners lie half the thickness aside, across the line.
        var (along, down) = (line.To.X - line.From.X, line.To.Y - line.From.Y);
        var length = Math.Max(double.Hypot(along, down), double.Epsilon);
        var (aside, below) = (half * Math.Abs(down) / length, half * Math.Abs(along) / length);
        return new Box(ends.Left - aside, ends.Top - below, ends.Right + aside, ends.Bottom + below);
    }

    private static Box OfText(TextMark mark)
    {
        var start = StartOf(mark);
        return TextFont.InkBox(mark.Text, mark.Face, mark.SizeMm, mark.TrackingEm).Moved(start.X, start.Y);
    }

    private static Box OfCorners(IReadOnlyList<Point> corners) =>
        new(
            corners.Min(corner => corner.X),
            corners.Min(corner => corner.Y),
            corners.Max(corner => corner.X),
            corners.Max(corner => corner.Y)
        );
}
