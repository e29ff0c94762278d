using System.Globalization;
using System.Text;
using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Press;

/// <summary>The classes of a picture: one for each ink and each face.</summary>
internal static class SvgStyleSheet
{
    /// <summary>The class of an ink.</summary>
    public static string Class(Ink ink) =>
        ink switch
        {
            Ink.Main => "pw-main",
            Ink.Soft => "pw-soft",
            Ink.Staff => "pw-staff",
            Ink.Rule => "pw-rule",
            Ink.Hair => "pw-hair",
            Ink.Fretting => "pw-fretting",
            Ink.Picking => "pw-picking",
            Ink.Shade => "pw-shade",
            _ => "pw-paper",
        };

    /// <summary>The class of a face.</summary>
    public static string Class(Face face) =>
        face switch
        {
            Face.Serif => "pw-serif",
            Face.SerifItalic => "pw-serif-italic",
            Face.SerifMedium => "pw-serif-medium",
            Face.Sans => "pw-sans",
            Face.SansItalic => "pw-sans-italic",
            Face.SansMedium => "pw-sans-medium",
            Face.SansBold => "pw-sans-bold",
            _ => "pw-small-caps",
        };

    /// <summary>The class of figures that hide what lies under them.</summary>
    public const string Ground = "pw-ground";

    /// <summary>The class of lines on a screen.</summary>
    public const string Line = "pw-line";

    /// <summary>The class of figures with an outline on a screen.</summary>
    public const string Edge = "pw-edge";

    /// <summary>The class of what pictures on a screen refer to.</summary>
    public const string Defs = "pw-defs";

    /// <summary>The rules for pictures on a screen, in the page's colours.</summary>
    public static string OfScreen() =>
        Of(SvgStyle.Screen with { Words = SvgWords.Text })
        + $".{Line}{{fill:none;stroke:currentColor}}.{Edge}{{stroke:currentColor}}.{Defs}{{position:absolute}}";

    /// <summary>The rules for a style.</summary>
    public static string Of(SvgStyle style)
    {
        var css = new StringBuilder();
        foreach (var ink in Enum.GetValues<Ink>())
            css.Append(CultureInfo.InvariantCulture, $".{Class(ink)}{{{Declared("color", ink, style)}}}");

        css.Append(CultureInfo.InvariantCulture, $".{Ground}{{")
            .Append(Declared("fill", Ink.Paper, style))
            .Append('}');
        if (style.Words == SvgWords.Text)
        {
            foreach (var face in Enum.GetValues<Face>())
                css.Append(CultureInfo.InvariantCulture, $".{Class(face)}{{{Font(face)}}}");
        }

        return css.ToString();
    }

    // The plain colour first, for readers that know no variables and skip the second.
    private static string Declared(string property, Ink ink, SvgStyle style)
    {
        var colour = $"#{style.Palette.Of(ink):x6}";
        var token = ink == Ink.Main ? "ink" : Class(ink)["pw-".Length..];
        return style.Variables
            ? $"{property}:{colour};{property}:var(--{token},{colour})"
            : $"{property}:{colour}";
    }

    private static string Font(Face face)
    {
        const string serif =
            "white-space:pre;font-variant-ligatures:none;font-family:Alegreya,'Iowan Old Style',Palatino,Georgia,serif";
        const string sansAfter = ",'Gill Sans',Candara,'Trebuchet MS',sans-serif";
        const string sans =
            "white-space:pre;font-variant-ligatures:none;font-variant-numeric:lining-nums tabular-nums;font-family:'Alegreya Sans'"
            + sansAfter;
        return face switch
        {
            Face.Serif => serif,
            Face.SerifItalic => serif + ";font-style:italic",
            Face.SerifMedium => serif + ";font-weight:500",
            Face.Sans => sans,
            Face.SansItalic => sans + ";font-style:italic",
            Face.SansMedium => sans + ";font-weight:500",
            Face.SansBold => sans + ";font-weight:700",
            _ => sans.Replace("Alegreya Sans", "Alegreya Sans SC", StringComparison.Ordinal)
                + ";font-weight:500",
        };
    }
}
