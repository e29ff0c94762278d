using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Scores;

/// <summary>
/// Draws bends: on the tab an arrow from beside the number up over all lines with its size in whole steps, an arrow down
/// where it is released; on the staff a line that rises from the note and stays, or comes down again.
/// </summary>
internal sealed class BendWriter(Scene scene)
{
    private const double TipAbove = 1.8;
    private const double ArrowLength = 0.8;
    private const double OverLine = 0.25;
    private const double FigureGap = 0.3;
    private const double StaffHeight = 0.9;
    private readonly ColumnInk _ink = scene.Piece.Ink;

    /// <summary>Arrows of the tab with their figures.</summary>
    public void WriteTab(Block tab)
    {
        foreach (var column in scene.Plan.Columns)
        {
            if (column.Bend is { } bend)
            {
                var start = new Point(
                    column.X + _ink.BendStart(column, Lane.Tab) + BendRoom.Gap,
                    scene.Piece.Sizes.TabLine(column.Heads[^1].Tone.Place.String)
                );
                WriteUp(tab, column, start);
                if (bend.Release)
                {
                    WriteDown(tab, column, start.Moved(BendRoom.TabRise, 0));
                }

                var figure = BendRoom.Figure(bend, scene.Piece.Sizes);
                var y = -TipAbove - FigureGap - figure.Ink().Bottom;
                tab.Text(
                    Scene.Tag(column, "bend-figure"),
                    figure,
                    start.X + BendRoom.TabRise,
                    y,
                    Anchor.Middle
                );
            }
        }
    }

    /// <summary>Lines of the staff.</summary>
    public void WriteStaff(Block staff)
    {
        foreach (var column in scene.Plan.Columns)
        {
            if (column.Bend is { } bend)
            {
                var start = new Point(
                    column.X + _ink.BendStart(column, Lane.Staff) + BendRoom.Gap,
                    column.Heads[^1].Y
                );
                var peak = start.Moved(BendRoom.StaffRise, -StaffHeight);
                var end = peak.Moved(BendRoom.StaffEnd, bend.Release ? StaffHeight : 0);
                staff.Stroke(Scene.Tag(column, "bend", 1), (start, start, peak, peak), Pens.Arrow);
                staff.Stroke(Scene.Tag(column, "bend", 2), (peak, peak, end, end), Pens.Arrow);
            }
        }
    }

    /// <summary>Figures over the staff, where no tab tells them.</summary>
    public void WriteFigures()
    {
        if (scene.Tab is not null)
        {
            return;
        }

        Row.Above(
            scene.Top,
            scene
                .Plan.Columns.Where(column => column.Bend is not null)
                .Select(column =>
                {
                    var x = column.X + _ink.BendStart(column, Lane.Staff) + BendRoom.Gap + BendRoom.StaffRise;
                    var figure = BendRoom.Figure(column.Bend!, scene.Piece.Sizes);
                    var tag = Scene.Tag(column, "bend-figure");
                    var ink = figure.Ink(Anchor.Middle).Moved(x, 0);
                    return new RowItem(
                        ink,
                        y =>
                        {
                            scene.Top.Text(tag, figure, x, y, Anchor.Middle);
                            // Later signs stand over it, not close beside it.
                            scene.Top.Reserve(ink.Moved(0, y).Grown(FigureGap));
                        }
                    );
                }),
            FigureGap
        );
    }

    private static void WriteUp(Block tab, Column column, Point from)
    {
        var tip = new Point(from.X + BendRoom.TabRise, -TipAbove);
        var to = tip.Moved(0, ArrowLength / 2);
        var turn = new Point(to.X, (from.Y + to.Y) / 2);
        tab.Stroke(
            Scene.Tag(column, "tab-bend", 1),
            (from, from.Moved(BendRoom.TabRise, 0), turn, to),
            Pens.Arrow
        );
        WriteHead(tab, Scene.Tag(column, "tab-bend", 2), tip, ArrowLength);
    }

    // From the peak, which stands over a place on the string's line, to beside it.
    private static void WriteDown(Block tab, Column column, Point under)
    {
        var from = new Point(under.X + (Pens.Arrow / 2), -TipAbove);
        var tip = under.Moved(BendRoom.TabFall, -OverLine);
        var to = tip.Moved(0, -ArrowLength / 2);
        var turn = new Point(to.X, (from.Y + to.Y) / 2);
        tab.Stroke(
            Scene.Tag(column, "tab-bend", 3),
            (from, from.Moved(BendRoom.TabFall, 0), turn, to),
            Pens.Arrow
        );
        WriteHead(tab, Scene.Tag(column, "tab-bend", 4), tip, -ArrowLength);
    }

    private static void WriteHead(Block tab, Tag tag, Point tip, double length) =>
        tab.Figure(tag, tip, tip.Moved(BendRoom.ArrowHalf, length), tip.Moved(-BendRoom.ArrowHalf, length));
}
