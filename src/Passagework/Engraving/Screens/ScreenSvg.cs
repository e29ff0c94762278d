using System.Text;
using Passagework.Engraving.Press;

namespace Passagework.Engraving.Screens;

/// <summary>The outermost element of a picture for a screen.</summary>
internal static class ScreenSvg
{
    /// <summary>Opens it at its natural size.</summary>
    /// <param name="svg">Where it is written.</param>
    /// <param name="id">Its id; none where empty.</param>
    /// <param name="size">Width and height in pixels.</param>
    /// <param name="label">What it shows, for those who do not see it.</param>
    public static void Open(StringBuilder svg, string id, (double Width, double Height) size, string label)
    {
        svg.Append("<svg xmlns=\"http://www.w3.org/2000/svg\"");
        if (id.Length > 0)
            svg.Attribute("id", id);

        svg.Append(" class=\"pw-screen\" width=\"").Number(size.Width, CompactSvg.PxPlaces);
        svg.Append("\" height=\"").Number(size.Height, CompactSvg.PxPlaces);
        svg.Append("\" viewBox=\"0 0 ").Number(size.Width, CompactSvg.PxPlaces);
        svg.Append(' ').Number(size.Height, CompactSvg.PxPlaces);
        svg.Append("\" fill=\"currentColor\" role=\"img\"").Attribute("aria-label", label).Append('>');
    }

    /// <summary>Writes what is drawn; none of it takes the pointer.</summary>
    public static void WriteMarks(StringBuilder svg, CompactSvg elements)
    {
        svg.Append("<g pointer-events=\"none\" text-anchor=\"middle\">");
        elements.Write(svg);
        svg.Append("</g>");
    }
}
