using System.Text;
using Passagework.Engraving.Press;

namespace Passagework.Engraving.Screens;

/// <summary>What all pictures for a screen refer to; a page holds it once.</summary>
public static class ScreenDefs
{
    private static readonly Lazy<string> Written = new(Write);

    /// <summary>
    /// An <c>svg</c> without size that holds the signs of music and of moves as markers, each in its ink, and the rulings. Not to be hidden
    /// with <c>display: none</c>, which would take the markers away.
    /// </summary>
    public static string Markup => Written.Value;

    /// <summary>
    /// The classes of the pictures as CSS: inks in the variables of the look's tokens (<c>--ink</c>, <c>--soft</c>,
    /// <c>--fretting</c> …, with the light colours where a page sets none), and the faces, whose fonts the page brings.
    /// </summary>
    public static string StyleSheet { get; } = SvgStyleSheet.OfScreen();

    private static string Write()
    {
        var svg = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"0\" height=\"0\"");
        svg.Attribute("class", SvgStyleSheet.Defs).Append(" aria-hidden=\"true\"><defs>");
        SignDefs.Write(svg);
        MoveMarkers.Write(svg);
        return svg.Append("</defs></svg>").ToString();
    }
}
