using System.Text;
using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Press;

/// <summary>
/// All places of one sign at one size, as one line that is not drawn and bears the sign's marker at each corner; its two
/// ends bear none.
/// </summary>
/// <param name="marker">The marker's id.</param>
/// <param name="ink">What it is drawn in.</param>
/// <param name="spacePx">Length of one staff space in pixels, a marker's unit.</param>
internal sealed class CompactSigns(string marker, Ink ink, double spacePx) : ICompactElement
{
    private readonly PathSteps _steps = Begun();

    public int Layer => CompactLayer.Of(ink);

    public string Attributes =>
        new StringBuilder(" fill=\"none\" stroke-width=\"").Number(spacePx).Append('"').ToString();

    /// <summary>The sign with its origin at a point, in pixels.</summary>
    public void Add(Point at) => _steps.Corner(at);

    public void Write(StringBuilder svg, string attributes)
    {
        svg.Append("<path").Append(attributes).Append(" marker-mid=\"url(#").Append(marker);
        svg.Append(")\" d=\"").Append(_steps.Data).Append("h0\"/>");
    }

    private static PathSteps Begun()
    {
        var steps = new PathSteps();
        steps.Move(default);
        return steps;
    }
}

/// <summary>A sign of music for which there is no marker, by its own outline.</summary>
/// <param name="codePoint">The sign.</param>
/// <param name="ink">What it is drawn in.</param>
/// <param name="at">Its origin, in pixels.</param>
/// <param name="spacePx">Length of one staff space in pixels.</param>
internal sealed class CompactOutline(int codePoint, Ink ink, Point at, double spacePx) : ICompactElement
{
    public int Layer => CompactLayer.Of(ink);

    public string Attributes => $" class=\"{SvgStyleSheet.Class(ink)}\"";

    public void Write(StringBuilder svg, string attributes)
    {
        svg.Append("<path").Append(attributes).Append(" transform=\"translate(").Pair(at).Append(")scale(");
        svg.Number(spacePx * SignDefs.SpacesPerUnit, SignDefs.ScalePlaces).Append(")\" d=\"");
        svg.Append(SignDefs.OutlineOf(codePoint)).Append("\"/>");
    }
}
