using System.Collections.Frozen;
using System.Globalization;
using System.Text;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using static Passagework.Engraving.Fonts.Glyphs;

namespace Passagework.Engraving.Press;

/// <summary>What compact pictures refer to: a marker for each sign of music in the inks that it usually has, and rulings.</summary>
/// <remarks>A marker's unit is the width of the line that bears it, so one staff space.</remarks>
internal static class SignDefs
{
    /// <summary>Places after the point of a scale.</summary>
    public const int ScalePlaces = 6;

    // As wide and as far apart as the look has them, in pixels.
    private const double RuledPitchPx = 4.5;
    private const double RuledLinePx = 1.7;

    // Signs that a score is full of, first to last of each kind; rarer ones are drawn by their outline where they stand.
    private static readonly (int First, int Last, Ink[] Inks)[] Kinds =
    [
        (GClef8vb, GClef8vb, [Ink.Main]),
        (FClef8vb, FClef8vb, [Ink.Main]),
        (SixStringTabClef, SixStringTabClef, [Ink.Main]),
        (TimeSig0, TimeSig9, [Ink.Main]),
        (NoteheadWhole, NoteheadBlack, [Ink.Main]),
        (Flag8thUp, Flag32ndDown, [Ink.Main]),
        (RestWhole, Rest32nd, [Ink.Main]),
        (AugmentationDot, AugmentationDot, [Ink.Main]),
        (Tuplet3, Tuplet7, [Ink.Main]),
        // Also among words.
        (AccidentalFlat, AccidentalSharp, [Ink.Main, Ink.Soft, Ink.Paper]),
        (ArticAccentAbove, ArticStaccatoBelow, [Ink.Main]),
        (StringsDownBow, StringsDownBow, [Ink.Picking]),
        (StringsUpBow, StringsUpBow, [Ink.Picking]),
        (FingeringPLower, FingeringPLower, [Ink.Picking]),
        (FingeringILower, FingeringILower, [Ink.Picking]),
        (FingeringMLower, FingeringMLower, [Ink.Picking]),
        (FingeringALower, FingeringALower, [Ink.Picking]),
        (Fingering0, Fingering4, [Ink.Fretting]),
        (GuitarVibratoStroke, GuitarVibratoStroke, [Ink.Main]),
    ];

    private static readonly FrozenSet<(int CodePoint, Ink Ink)> Known = Kinds
        .SelectMany(kind =>
            Enumerable
                .Range(kind.First, kind.Last - kind.First + 1)
                .SelectMany(code => kind.Inks.Select(ink => (code, ink)))
        )
        .Where(sign => MusicFont.Has(sign.code))
        .ToFrozenSet();

    /// <summary>Staff spaces in a unit of an outline.</summary>
    public static double SpacesPerUnit => MusicFont.SpacesPerEm / MusicFont.Cut.UnitsPerEm;

    /// <summary>Whether there is a marker.</summary>
    public static bool Has(int codePoint, Ink ink) => Known.Contains((codePoint, ink));

    /// <summary>Name of a sign's marker.</summary>
    public static string Id(int codePoint, Ink ink) =>
        string.Create(CultureInfo.InvariantCulture, $"{SvgStyleSheet.Class(ink)}-{codePoint:x}");

    /// <summary>Name of the ruling in an ink.</summary>
    public static string RuledId(Ink ink) => $"{SvgStyleSheet.Class(ink)}-ruled";

    /// <summary>The outline of a sign as path data in the font's units; empty where it has none.</summary>
    public static string OutlineOf(int codePoint) =>
        MusicFont.Cut.TryGlyph(codePoint, out var glyph) ? MusicFont.Cut.OutlineOf(glyph).Data : "";

    /// <summary>All of them, to stand inside <c>defs</c>.</summary>
    public static void Write(StringBuilder svg)
    {
        foreach (var ink in new[] { Ink.Fretting, Ink.Picking, Ink.Main })
        {
            WriteRuling(svg, ink);
        }

        foreach (var (codePoint, ink) in Known.OrderBy(sign => sign.CodePoint).ThenBy(sign => sign.Ink))
        {
            Open(svg, Id(codePoint, ink), ink).Append("<path transform=\"scale(");
            svg.Number(SpacesPerUnit, ScalePlaces).Append(")\" d=\"").Append(OutlineOf(codePoint));
            svg.Append("\"/></marker>");
        }
    }

    /// <summary>Opens a marker in an ink.</summary>
    public static StringBuilder Open(StringBuilder svg, string id, Ink ink) =>
        svg.Append("<marker")
            .Attribute("id", id)
            .Attribute("class", SvgStyleSheet.Class(ink))
            .Append(" overflow=\"visible\" fill=\"currentColor\">");

    private static void WriteRuling(StringBuilder svg, Ink ink)
    {
        svg.Append("<pattern").Attribute("id", RuledId(ink)).Attribute("class", SvgStyleSheet.Class(ink));
        svg.Append(" patternUnits=\"userSpaceOnUse\" patternTransform=\"rotate(45)\"");
        svg.Attribute("width", RuledPitchPx).Attribute("height", RuledPitchPx);
        svg.Append("><path stroke=\"currentColor\"").Attribute("stroke-width", 2 * RuledLinePx);
        svg.Append(" d=\"M0 0V").Number(RuledPitchPx).Append("\"/></pattern>");
    }
}
