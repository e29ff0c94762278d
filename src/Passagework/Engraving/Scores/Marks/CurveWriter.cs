using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Exercises;

namespace Passagework.Engraving.Scores;

/// <summary>Draws ties, slurs and slides on the staff.</summary>
internal sealed class CurveWriter(Scene scene, Block staff)
{
    private const double TieClear = 0.7;
    private const double SlurClear = 0.75;
    private const double OverInk = 0.3;
    private const double SlideClear = 0.25;
    private const double FlattestBulge = 0.8;
    private const double SteepestBulge = 3;
    private const int Samples = 9;

    // Behind clef and key, before whatever stands left of the first head.
    private double LineStart => scene.Plan.Prefix.Width + 0.4;

    /// <summary>Ties: from head to head, or to and from the end of the line.</summary>
    public void WriteTies()
    {
        var columns = scene.Plan.Columns;
        for (var i = 0; i < columns.Length; i++)
        {
            var column = columns[i];
            if (i == 0 && column.Written.TiedBack)
            {
                Tie(column, "tie-back", (LineStart - 0.3, column.X));
            }

            if (column.Written.TiedOn)
            {
                Tie(
                    column,
                    "tie",
                    (column.X, i + 1 < columns.Length ? columns[i + 1].X : scene.Plan.EndX + 0.3)
                );
            }
        }
    }

    /// <summary>Slurs: one over each chain of hammers and pulls.</summary>
    public void WriteSlurs()
    {
        var chain = ImmutableArray.CreateBuilder<Column>();
        var fromBefore = false;
        foreach (var column in scene.Plan.Columns.Where(column => column.Begins))
        {
            if (!IsSlurred(column))
            {
                Slur(chain, fromBefore, toNext: false);
                fromBefore = false;
            }
            else if (chain.Count == 0)
            {
                fromBefore = true;
            }

            chain.Add(column);
        }

        Slur(chain, fromBefore, scene.Plan.Next is { } next && IsSlurred(next));
    }

    /// <summary>Slides: a line from head to head.</summary>
    public void WriteSlides()
    {
        var columns = scene.Plan.Columns;
        for (var i = 0; i < columns.Length; i++)
        {
            if (columns[i].Into != Exercises.Slur.Slide)
            {
                continue;
            }

            var to = columns[i];
            var end =
                to.X - (scene.Piece.Ink.Of(to, Lane.Staff)?.Left ?? 0) + ColumnInk.SlideRoom - SlideClear;
            var rise = i > 0 ? (to.Heads[0].Y - columns[i - 1].Heads[0].Y) / 4 : 0;
            var start =
                i > 0
                    ? columns[i - 1].X
                        + (scene.Piece.Ink.Of(columns[i - 1], Lane.Staff)?.Right ?? 0)
                        + SlideClear
                    : end - 1;
            var middle = i > 0 ? (to.Heads[0].Y + columns[i - 1].Heads[0].Y) / 2 : to.Heads[0].Y;
            staff.Line(
                Scene.Tag(to, "slide"),
                new Point(start, middle - rise),
                new Point(end, middle + rise),
                Pens.StaffLine
            );
        }
    }

    /// <summary>Whether a note is reached by a hammer-on or a pull-off.</summary>
    public static bool IsSlurred(Column column) =>
        column.Into is Exercises.Slur.Hammer or Exercises.Slur.Pull;

    private void Tie(Column column, string kind, (double From, double To) ends)
    {
        for (var i = 0; i < column.Heads.Length; i++)
        {
            // Away from the stem; of a chord the upper half curves up and the lower half down. A bend rises over the note.
            var below =
                column.Heads.Length == 1 ? column.Up || column.Bend is not null : i < column.Heads.Length / 2;
            var side = below ? 1 : -1;
            var y = column.Heads[i].Y + (side * TieClear);
            var (from, to) = (ends.From + 0.3, ends.To - 0.3);
            var bulge = side * Math.Clamp(0.2 * (to - from), 0.5, 1.2);
            staff.Curve(
                new Tag(Scene.Tag(column, kind, i + 1).Id, "tie", column.Note),
                new Arc(new Point(from, y), new Point(to, y), bulge)
            );
        }
    }

    private void Slur(ImmutableArray<Column>.Builder chain, bool fromBefore, bool toNext)
    {
        if (chain.Count > 1 || (chain.Count == 1 && (fromBefore || toNext)))
        {
            // Opposite the stems; above where they point both ways.
            var below = chain.All(column => column.Up);
            var (first, last) = (chain[0], chain[^1]);
            var from = new Point(fromBefore ? LineStart : first.X, EndY(first, below));
            var to = new Point(toNext ? scene.Plan.EndX : last.X, EndY(last, below));
            staff.Curve(
                Scene.Tag(first, fromBefore ? "slur-on" : "slur") with
                {
                    Kind = "slur",
                },
                Over(from, to, below)
            );
        }

        chain.Clear();
    }

    private double EndY(Column column, bool below)
    {
        var (left, right) = (column.X - 0.3, column.X + 0.3);
        return below
            ? Math.Max(column.Heads[0].Y + SlurClear, staff.Below.Over(left, right) + OverInk)
            : Math.Min(column.Heads[^1].Y - SlurClear, -staff.Above.Over(left, right) - OverInk);
    }

    // As flat as the ink under it allows; where that would be too steep the ends move out.
    private Arc Over(Point from, Point to, bool below)
    {
        var side = below ? 1 : -1;
        var bulge = Math.Clamp(0.12 * (to.X - from.X), FlattestBulge, 1.6);
        var lift = 0.0;
        for (var i = 1; i < Samples; i++)
        {
            var share = i / (double)Samples;
            var point = new Arc(from, to, 0).At(share);
            var reach = below
                ? staff.Below.Over(point.X - 0.3, point.X + 0.3)
                : staff.Above.Over(point.X - 0.3, point.X + 0.3);
            var lack = reach + OverInk - (side * point.Y);
            var factor = 3 * share * (1 - share);
            bulge = Math.Max(bulge, Math.Min(SteepestBulge, lack / factor));
            lift = Math.Max(lift, lack - (SteepestBulge * factor));
        }

        return new Arc(from.Moved(0, side * lift), to.Moved(0, side * lift), side * bulge);
    }
}
