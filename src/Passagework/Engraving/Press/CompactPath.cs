using System.Text;
using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Press;

/// <summary>How the figures of one path are drawn.</summary>
/// <param name="Ink">What they are drawn in.</param>
/// <param name="Filling">How their insides are drawn; none for lines.</param>
/// <param name="WidthPx">Thickness of lines and outlines; 0 for none.</param>
internal readonly record struct Pen(Ink Ink, Filling Filling, double WidthPx)
{
    /// <summary>Lengths of ink and gap in pixels, as SVG writes them; empty for an unbroken line.</summary>
    public string Dash { get; init; } = "";

    /// <summary>Whether ends and corners are round.</summary>
    public bool IsRound { get; init; }

    /// <summary>Whether it hides what lies under it.</summary>
    public bool Covers { get; init; }
}

/// <summary>All figures that are drawn alike, as one path.</summary>
/// <param name="pen">How they are drawn.</param>
/// <param name="frame">How millimetres become pixels.</param>
internal sealed class CompactPath(Pen pen, PxFrame frame) : ICompactElement
{
    private readonly PathSteps _steps = new();

    public int Layer => CompactLayer.Of(pen.Ink, pen.Covers ? Filling.Paper : pen.Filling);

    /// <summary>A line.</summary>
    public void Add(LineMark line)
    {
        _steps.Move(frame.At(line.From));
        _steps.Line(frame.At(line.To));
    }

    /// <summary>A closed figure.</summary>
    public void Add(PolygonMark polygon)
    {
        _steps.Move(frame.At(polygon.Corners[0]));
        foreach (var corner in polygon.Corners.AsSpan()[1..])
        {
            _steps.Line(frame.At(corner));
        }

        _steps.Close();
    }

    /// <summary>A dot as wide as the pen: a line without length that has round ends.</summary>
    public void Add(Point centre) => _steps.Dot(frame.At(centre));

    /// <summary>A slur or tie.</summary>
    public void Add(CurveMark curve)
    {
        var shape = CurveShape.Of(curve);
        _steps.Move(frame.At(curve.From));
        _steps.Curve(frame.At(shape.Outer.Lean), frame.At(shape.Outer.Back), frame.At(curve.To));
        _steps.Curve(frame.At(shape.Inner.Back), frame.At(shape.Inner.Lean), frame.At(curve.From));
        _steps.Close();
    }

    public string Attributes
    {
        get
        {
            var svg = new StringBuilder(" class=\"").Append(SvgStyleSheet.Class(pen.Ink));
            if (pen.Filling == Filling.Paper)
                svg.Append(' ').Append(SvgStyleSheet.Ground);
            if (pen.Filling == Filling.None)
                svg.Append(' ').Append(SvgStyleSheet.Line);
            else if (pen.WidthPx > 0)
                svg.Append(' ').Append(SvgStyleSheet.Edge);
            svg.Append('"');
            if (pen.Filling == Filling.Ruled)
                svg.Append(" fill=\"url(#").Append(SignDefs.RuledId(pen.Ink)).Append(")\"");
            if (pen.WidthPx > 0)
                svg.Append(" stroke-width=\"").Number(pen.WidthPx).Append('"');
            if (pen.Dash.Length > 0)
                svg.Append(" stroke-dasharray=\"").Append(pen.Dash).Append('"');
            var round =
                pen.Filling == Filling.None ? " stroke-linecap=\"round\"" : " stroke-linejoin=\"round\"";
            return svg.Append(pen.IsRound ? round : "").ToString();
        }
    }

    public void Write(StringBuilder svg, string attributes) =>
        svg.Append("<path").Append(attributes).Append(" d=\"").Append(_steps.Data).Append("\"/>");
}
