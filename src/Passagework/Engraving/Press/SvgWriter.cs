using System.Collections.Immutable;
using System.Text;
using Passagework.Engraving.Drawing;
using Passagework.Foundation;

namespace Passagework.Engraving.Press;

/// <summary>
/// Writes a page as SVG, a unit for each millimetre. Every mark carries its id, a class for its ink (<c>pw-main</c>,
/// <c>pw-fretting</c> …), its kind as <c>data-kind</c> and its note as <c>data-note</c>, so that a style sheet or script
/// finds it.
/// </summary>
public static class SvgWriter
{
    /// <summary>
    /// The picture; the same page gives the same text. Refused when the page is too large or a text has letters that the
    /// typeface lacks.
    /// </summary>
    public static Outcome<string> Write(Page page, SvgStyle style) =>
        Proof.Of(page).Then(marks => (Outcome<string>)Write(page, style, marks));

    private static string Write(Page page, SvgStyle style, ImmutableArray<ReadyMark> marks)
    {
        var body = new SvgMarks(style);
        foreach (var mark in marks)
            body.Write(mark);

        var svg = new StringBuilder(body.Elements.Length + body.Outlines.Length + 2_000);
        Open(svg, page, style);
        if (style.StyleSheet)
            svg.Append("<style>").Append(SvgStyleSheet.Of(style)).Append("</style>");
        if (body.Outlines.Length > 0)
            svg.Append("<defs>").Append(body.Outlines).Append("</defs>");

        return svg.Append(body.Elements).Append("</svg>\n").ToString();
    }

    private static void Open(StringBuilder svg, Page page, SvgStyle style)
    {
        svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").Number(page.WidthMm);
        svg.Append("mm\" height=\"").Number(page.HeightMm).Append("mm\" viewBox=\"0 0 ");
        svg.Number(page.WidthMm).Append(' ').Number(page.HeightMm);
        svg.Append("\" class=\"pw-page\" fill=\"currentColor\" role=\"group\"");
        Named(svg, style, "title", "aria-labelledby", style.Title);
        Named(svg, style, "description", "aria-describedby", page.Description);
        svg.Append('>');
        Element(svg, style, "title", style.Title);
        Element(svg, style, "description", page.Description);
    }

    private static void Named(StringBuilder svg, SvgStyle style, string id, string attribute, string? text)
    {
        if (text is not null)
            svg.Attribute(attribute, $"{style.IdPrefix}_{id}");
    }

    private static void Element(StringBuilder svg, SvgStyle style, string id, string? text)
    {
        if (text is null)
        {
            return;
        }

        var element = id == "title" ? "title" : "desc";
        svg.Append('<').Append(element).Attribute("id", $"{style.IdPrefix}_{id}").Append('>');
        svg.Escaped(text).Append("</").Append(element).Append('>');
    }
}
