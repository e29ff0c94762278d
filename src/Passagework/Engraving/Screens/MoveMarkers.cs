using System.Globalization;
using System.Text;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;
using Passagework.Engraving.Strips;

namespace Passagework.Engraving.Screens;

/// <summary>The signs of moves as markers of the page: one for each sign and hand.</summary>
internal static class MoveMarkers
{
    // Strings that lie between two of the eight that an instrument may have.
    private const int MostPassed = 6;
    private const double UnitsPerSpace = 10;

    private static readonly (MoveSign Sign, Ink Ink)[] Known =
    [
        .. Enumerable
            .Range(1, MostPassed)
            .SelectMany(strings =>
                new[] { Ink.Fretting, Ink.Picking }.Select(ink => (new MoveSign(MoveKind.Skip, strings), ink))
            ),
        .. new[] { MoveKind.Roll, MoveKind.SameFinger, MoveKind.ShiftUp, MoveKind.ShiftDown }.Select(kind =>
            (new MoveSign(kind), Ink.Fretting)
        ),
        (new MoveSign(MoveKind.Sweep), Ink.Picking),
    ];

    /// <summary>Name of a sign's marker.</summary>
    public static string Id(MoveSign sign, Ink ink) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{SvgStyleSheet.Class(ink)}-move-{(int)sign.Kind}-{sign.Strings}"
        );

    /// <summary>All of them, to stand inside <c>defs</c>.</summary>
    public static void Write(StringBuilder svg)
    {
        foreach (var (sign, ink) in Known)
        {
            var elements = new CompactSvg(new PxFrame(UnitsPerSpace));
            foreach (var mark in new SignDrawing("", ink, null, 1).Draw(sign, default))
            {
                elements.Add(ReadyMark.Of(mark));
            }

            SignDefs.Open(svg, Id(sign, ink), ink).Append("<g transform=\"scale(");
            svg.Number(1 / UnitsPerSpace).Append(")\">");
            elements.Write(svg);
            svg.Append("</g></marker>");
        }
    }
}
