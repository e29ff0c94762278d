using System.Collections.Immutable;
using System.Text;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;
using Passagework.Engraving.Scores;

namespace Passagework.Engraving.Screens;

/// <summary>The columns of the notes that begin in a system: where they are, and what takes the pointer there.</summary>
internal static class ScreenColumns
{
    // Half a column where notes stand far apart: as much as a finger's target or the widest column needs.
    private const double LeastHalfPx = 12;
    private const double HalfSpaces = 2.2;
    private const double LeastAsidePx = 3;

    /// <summary>Each reaches half way to its neighbours, rests and held notes too, and no further than it needs.</summary>
    public static ImmutableArray<ScreenNote> Of(ScoreSystem system, PxFrame frame, double spacePx)
    {
        var most = Math.Max(LeastHalfPx, HalfSpaces * spacePx);
        var columns = system.Columns;
        var notes = ImmutableArray.CreateBuilder<ScreenNote>();
        for (var i = 0; i < columns.Length; i++)
        {
            if (columns[i].Heads is not [{ TiedBack: false } head, ..])
            {
                continue;
            }

            var x = frame.X(columns[i].XMm);
            var left = i == 0 ? x - most : (frame.X(columns[i - 1].XMm) + x) / 2;
            var right = i == columns.Length - 1 ? x + most : (x + frame.X(columns[i + 1].XMm)) / 2;
            notes.Add(
                new ScreenNote(
                    head.Note,
                    Tenth(x),
                    Math.Round(Math.Max(Math.Max(left, x - most), 0)),
                    Math.Round(Math.Min(right, x + most))
                )
            );
        }

        return notes.ToImmutable();
    }

    /// <summary>
    /// One rectangle for each, as high as the system; that of the chosen note is the band. Where the note is not in its middle,
    /// <c>data-x</c> says how far it is from the left edge.
    /// </summary>
    public static void Write(
        StringBuilder svg,
        ImmutableArray<ScreenNote> notes,
        double heightPx,
        int? chosen
    )
    {
        svg.Append("<g class=\"pw-hits\" fill=\"none\" pointer-events=\"all\">");
        foreach (var note in notes)
        {
            svg.Append("<path data-note=\"").Append(note.Note).Append('"');
            WriteMiddle(svg, note);
            if (note.Note == chosen)
            {
                svg.Append(" class=\"").Append(SvgStyleSheet.Class(Ink.Shade));
                svg.Append("\" fill=\"currentColor\"");
            }

            var width = note.RightPx - note.LeftPx;
            svg.Append(" d=\"M").Number(note.LeftPx).Append(" 0h").Number(width);
            svg.Append('v').Number(heightPx).Append("h-").Number(width).Append("\"/>");
        }

        svg.Append("</g>");
    }

    // A cursor stands on the note, which a column with unequal neighbours does not have in its middle.
    private static void WriteMiddle(StringBuilder svg, ScreenNote note)
    {
        var middle = note.XPx - note.LeftPx;
        if (Math.Abs((2 * middle) - (note.RightPx - note.LeftPx)) >= LeastAsidePx)
        {
            svg.Append(" data-x=\"").Number(Math.Round(middle)).Append('"');
        }
    }

    /// <summary>Pixels to the tenth, as the picture has them.</summary>
    public static double Tenth(double px) =>
        Math.Round(px, CompactSvg.PxPlaces, MidpointRounding.AwayFromZero);
}
