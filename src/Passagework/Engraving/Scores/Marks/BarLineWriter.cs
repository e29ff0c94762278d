using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Engraving.Scores;

/// <summary>Draws bar lines through all staves of a system.</summary>
/// <param name="scene">The system.</param>
/// <param name="height">From the first line of the upper staff to the last of the lower.</param>
internal sealed class BarLineWriter(Scene scene, double height)
{
    private int _lines;

    public void Write()
    {
        if (scene is { Staff: not null, Tab: not null })
        {
            Line(0, Pens.ThinBar);
        }

        for (var i = 0; i < scene.Plan.Bars.Length; i++)
        {
            var bar = scene.Plan.Bars[i];
            var shared = i > 0 && scene.Plan.Bars[i - 1].Closing == BarEdge.RepeatEnd;
            WriteOpening(bar, shared);
            WriteClosing(bar);
        }
    }

    private void WriteOpening(PlannedBar bar, bool shared)
    {
        if (bar.Opening != BarEdge.RepeatStart)
        {
            return;
        }

        var x = bar.StartX;
        x += shared ? 0 : Line(x, Pens.ThickBar);
        x += Pens.BarGap;
        x += Line(x, Pens.ThinBar);
        Dots(x + Pens.BarDotGap);
    }

    private void WriteClosing(PlannedBar bar)
    {
        var x = bar.EndX;
        if (bar.Closing == BarEdge.RepeatEnd)
        {
            Dots(x);
            x += BarEdges.Dots;
        }

        if (bar.Closing != BarEdge.None)
        {
            x += Line(x, Pens.ThinBar);
        }

        if (bar.Closing is BarEdge.Final or BarEdge.RepeatEnd)
        {
            Line(x + Pens.BarGap, Pens.ThickBar);
        }
    }

    private double Line(double left, double width)
    {
        var x = left + (width / 2);
        scene.Top.Line(scene.Tag("bar-line", ++_lines), new Point(x, 0), new Point(x, height), width);
        return width;
    }

    private void Dots(double x)
    {
        if (scene.Staff is { } staff)
        {
            Dots(x, staff, StaffPlace.Height / 2, 0.5);
        }

        if (scene.Tab is { } tab)
        {
            // In the spaces next to the middle one, or to the middle line.
            var gap = scene.Piece.Sizes.TabGap * (scene.Piece.Sizes.Strings % 2 == 0 ? 1 : 0.5);
            Dots(x, tab, tab.Height / 2, gap);
        }
    }

    private void Dots(double x, Block block, double middle, double away)
    {
        foreach (var y in new[] { middle - away, middle + away })
        {
            block.Glyph(scene.Tag("repeat-dot", ++_lines), Glyphs.AugmentationDot, x, y);
        }
    }
}
