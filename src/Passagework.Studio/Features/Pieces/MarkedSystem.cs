using System.Globalization;
using System.Text;
using Passagework.Engraving.Screens;
using Passagework.Hands;

namespace Passagework.Studio.Features.Pieces;

/// <summary>One system of a score with the hardest moves marked under it.</summary>
internal static class MarkedSystem
{
    private const double RoomPx = 34;
    private const double LinePx = 10;
    private const double NumberPx = 27;
    private const double PastHeadPx = 7;
    private const double BetweenPx = 4;

    /// <summary>Height with the marks.</summary>
    public static double HeightOf(ScreenSystem system) => system.HeightPx + RoomPx;

    /// <summary>The system's picture with a line under each hard move in it, and its number.</summary>
    public static string Of(ScreenSystem system, ScreenScore score, IEnumerable<HardMove> moves)
    {
        var svg = new StringBuilder();
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {system.WidthPx:0.#} {HeightOf(system):0.#}\">"
        );
        svg.Append(system.Svg);
        foreach (var move in moves)
        {
            if (system.Notes.FirstOrDefault(note => note.Note == move.Note) is { } to)
                Mark(svg, system, move, (FromPx(system, score, move.Note - 1), to.XPx));
        }

        return svg.Append("</svg>").ToString();
    }

    // A move from the system before begins where the lines do.
    private static double FromPx(ScreenSystem system, ScreenScore score, int note) =>
        system.Notes.FirstOrDefault(one => one.Note == note)?.XPx
        ?? (
            score.Systems.Any(other => other.Notes.Any(one => one.Note == note))
                ? system.MusicStartPx
                : system.MusicEndPx
        );

    private static void Mark(
        StringBuilder svg,
        ScreenSystem system,
        HardMove move,
        (double From, double To) px
    )
    {
        var (left, right) = (px.From - PastHeadPx, px.To + PastHeadPx);
        var y = system.HeightPx + LinePx;
        if (move.Hand != Limit.Picking)
            Line(svg, (left, right, y), "fretting", "");
        if (move.Hand != Limit.Fretting)
            Line(svg, (left, right, y + (move.Hand == Limit.Together ? BetweenPx : 0)), "picking", "6 3");

        var hand = move.Hand == Limit.Picking ? "picking" : "fretting";
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<text class=\"number {hand}\" fill=\"currentColor\" text-anchor=\"middle\" x=\"{(left + right) / 2:0.#}\" y=\"{system.HeightPx + NumberPx:0.#}\">{move.Number}</text>"
        );
    }

    private static void Line(
        StringBuilder svg,
        (double Left, double Right, double Y) at,
        string hand,
        string dashes
    ) =>
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<path class=\"{hand}\" stroke=\"currentColor\" stroke-width=\"2.5\" stroke-dasharray=\"{dashes}\" d=\"M{at.Left:0.#} {at.Y:0.#}H{at.Right:0.#}\"/>"
        );
}
