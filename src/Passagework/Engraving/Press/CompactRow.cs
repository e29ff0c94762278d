using System.Text;
using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Press;

/// <summary>How the figures of one row are set.</summary>
/// <param name="Ink">What they are drawn in.</param>
/// <param name="Face">The face.</param>
/// <param name="SizePx">The em.</param>
/// <param name="YPx">The baseline.</param>
internal readonly record struct RowStyle(Ink Ink, Face Face, double SizePx, double YPx)
{
    /// <summary>What is the same for all texts of the style on whatever baseline.</summary>
    public StringBuilder Attributes() =>
        new StringBuilder(" class=\"")
            .Append(SvgStyleSheet.Class(Ink))
            .Append(' ')
            .Append(SvgStyleSheet.Class(Face))
            .Append("\" font-size=\"")
            .Number(SizePx, CompactSvg.PxPlaces)
            .Append('"');

    /// <summary>Begins a text up to where its letters stand along the line.</summary>
    public StringBuilder Open(StringBuilder svg, string attributes) =>
        svg.Append("<text")
            .Append(attributes)
            .Append(" y=\"")
            .Number(YPx, CompactSvg.PxPlaces)
            .Append("\" x=\"");
}

/// <summary>Figures and short words on one baseline, as one text that tells the middle of each letter.</summary>
/// <param name="style">How they are set.</param>
internal sealed class CompactRow(RowStyle style) : ICompactElement
{
    private readonly StringBuilder _middles = new();
    private readonly StringBuilder _letters = new();

    public int Layer => CompactLayer.Of(style.Ink);

    public string Attributes => style.Attributes().ToString();

    /// <summary>A letter by its middle, in pixels.</summary>
    public void Add(Rune letter, double middlePx)
    {
        if (_letters.Length > 0)
            _middles.Append(' ');

        _middles.Number(middlePx, CompactSvg.PxPlaces);
        _letters.Append(letter.ToString());
    }

    public void Write(StringBuilder svg, string attributes)
    {
        style.Open(svg, attributes).Append(_middles).Append("\">");
        svg.Escaped(_letters.ToString()).Append("</text>");
    }
}

/// <summary>A line of words as one text.</summary>
/// <param name="mark">The words.</param>
/// <param name="style">How they are set.</param>
/// <param name="xPx">Where it stands along the line.</param>
internal sealed class CompactWords(TextMark mark, RowStyle style, double xPx) : ICompactElement
{
    public int Layer => CompactLayer.Of(style.Ink);

    public string Attributes
    {
        get
        {
            var svg = style.Attributes();
            if (mark.Anchor != Anchor.Middle)
                svg.Append(mark.Anchor == Anchor.Start ? " text-anchor=\"start\"" : " text-anchor=\"end\"");
            if (mark.TrackingEm != 0)
                svg.Append(" letter-spacing=\"").Number(mark.TrackingEm * style.SizePx).Append('"');
            return svg.ToString();
        }
    }

    public void Write(StringBuilder svg, string attributes)
    {
        style.Open(svg, attributes).Number(xPx, CompactSvg.PxPlaces).Append("\">");
        svg.Escaped(mark.Text).Append("</text>");
    }
}
