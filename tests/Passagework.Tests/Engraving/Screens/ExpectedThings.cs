using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Tests.Engraving.Screens;

/// <summary>What marks must be read back as, worked out mark by mark.</summary>
/// <param name="pxPerMm">Pixels in a millimetre.</param>
/// <param name="leftPx">Where 0 lies.</param>
internal sealed class ExpectedThings(double pxPerMm, double leftPx)
{
    /// <summary>The things in order of their text.</summary>
    public IEnumerable<string> Of(IEnumerable<Mark> marks) =>
        marks.SelectMany(Of).Order(StringComparer.Ordinal);

    private IEnumerable<string> Of(Mark mark) =>
        mark switch
        {
            LineMark line =>
            [
                $"line {Class(line)} pw-line {Width(line.WidthMm)} {Dash(line)} {At(line.From)} {At(line.To)}",
            ],
            CurveMark curve => [Curve(curve)],
            TextMark text => Text(text),
            GlyphMark glyph => [Sign(glyph)],
            CircleMark circle => Circle(circle),
            PolygonMark polygon => [Polygon(polygon)],
            _ => throw new InvalidDataException(mark.ToString()),
        };

    private string Sign(GlyphMark glyph)
    {
        var code = glyph.CodePoint.ToString("x", CultureInfo.InvariantCulture);
        return $"sign {Class(glyph)}-{code} {Width(glyph.SpaceMm)} {At(glyph.At)}";
    }

    private string Curve(CurveMark curve)
    {
        var shape = CurveShape.Of(curve);
        Point[] points =
        [
            curve.From,
            shape.Outer.Lean,
            shape.Outer.Back,
            curve.To,
            shape.Inner.Back,
            shape.Inner.Lean,
            curve.From,
        ];
        return $"curve {Class(curve)} pw-edge {Width(curve.EndMm)}  {string.Join(" ", points.Select(At))} closed";
    }

    private IEnumerable<string> Circle(CircleMark circle)
    {
        var (outer, inner) = (
            (2 * circle.RadiusMm) + circle.OutlineMm,
            (2 * circle.RadiusMm) - circle.OutlineMm
        );
        yield return $"dot {Class(circle)} pw-line {Width(outer)}  {At(circle.Centre)}";
        if (circle.Filling == Filling.Paper)
            yield return $"dot pw-paper pw-line {Width(inner)}  {At(circle.Centre)}";
    }

    private string Polygon(PolygonMark polygon)
    {
        var corners = polygon.Corners;
        var (left, right) = (corners.Min(c => c.X), corners.Max(c => c.X));
        var (top, bottom) = (corners.Min(c => c.Y), corners.Max(c => c.Y));
        var isBox =
            corners.Length == 4
            && corners.All(c => (c.X == left || c.X == right) && (c.Y == top || c.Y == bottom));
        var isPlain = polygon.Filling == Filling.Solid && polygon.OutlineMm == 0;
        if (isBox && isPlain && right - left <= 2 * (bottom - top))
        {
            var middle = (left + right) / 2;
            return $"line {Class(polygon)} pw-line {Width(right - left)}  {At(new(middle, corners[0].Y))} {At(new(middle, corners[2].Y))}";
        }

        var classes = polygon.Filling switch
        {
            Filling.Paper => " pw-ground pw-edge",
            Filling.None => " pw-line",
            _ => polygon.OutlineMm > 0 ? " pw-edge" : "",
        };
        var width = polygon.OutlineMm > 0 ? Width(polygon.OutlineMm) : "";
        return $"figure {Class(polygon)}{classes} {width}  {string.Join(" ", corners.Select(At))} closed";
    }

    private IEnumerable<string> Text(TextMark text)
    {
        var size = Short(Math.Round(text.SizeMm * pxPerMm, 1), 1);
        var style = $"{Class(text)} {FaceClass(text.Face)} {size}";
        var y = Math.Round(text.At.Y * pxPerMm, 1);
        if (text.Text.Length > 4 || text.Text.Contains(' ') || text.TrackingEm > 0)
        {
            var anchor = text.Anchor.ToString().ToLowerInvariant();
            yield return $"words {style} {anchor} {CompactReading.At(X(text.At.X), y)} {text.Text}";
            yield break;
        }

        // The middle of a letter by the widths of what stands before it and of itself, kerning left aside.
        var start = MarkBox.StartOf(text).X;
        for (var i = 0; i < text.Text.Length; i++)
        {
            var before = TextFont.Width(text.Text[..i], text.Face, text.SizeMm);
            var own = TextFont.Width(text.Text[i..(i + 1)], text.Face, text.SizeMm);
            yield return $"letter {style} {CompactReading.At(X(start + before + (own / 2)), y)} {text.Text[i]}";
        }
    }

    private double X(double mm) => (mm * pxPerMm) + leftPx;

    private string At(Point mm) => CompactReading.At(X(mm.X), mm.Y * pxPerMm);

    private string Width(double mm) => Short(Math.Round(mm * pxPerMm, 2), 2);

    private string Dash(LineMark line) =>
        string.Join(
            ' ',
            line.DashMm.Select(mm => Math.Round(mm * pxPerMm, 1).ToString(CultureInfo.InvariantCulture))
        );

    private static string Short(double value, int places) =>
        value.ToString(places == 1 ? ".#" : ".##", CultureInfo.InvariantCulture);

    private static string Class(Mark mark) =>
        mark.Ink == Ink.Main ? "pw-main" : $"pw-{mark.Ink.ToString().ToLowerInvariant()}";

    private static string FaceClass(Face face) =>
        face switch
        {
            Face.Sans => "pw-sans",
            Face.SansBold => "pw-sans-bold",
            Face.Serif => "pw-serif",
            Face.SerifItalic => "pw-serif-italic",
            Face.SmallCaps => "pw-small-caps",
            _ => throw new InvalidDataException(face.ToString()),
        };
}
