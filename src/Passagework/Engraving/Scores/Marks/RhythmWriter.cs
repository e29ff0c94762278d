using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Engraving.Scores;

/// <summary>
/// Draws note values under tab alone: stems down from a common height, beams level, half a stem for a half note, none for a
/// whole one; rests on the tab.
/// </summary>
internal sealed class RhythmWriter(Scene scene, Block tab)
{
    private const double FromLine = 1.1;
    private const double Length = 3.0;
    private const double HalfNote = 1.5;
    private const double DotDrop = 0.4;
    private const double TieDrop = 0.35;
    private const double TieEnd = 0.3;
    private const double TieBulge = 0.7;

    private double StemTop => tab.Height + FromLine;

    public void Write()
    {
        var columns = scene.Plan.Columns;
        for (var i = 0; i < columns.Length; i++)
        {
            var column = columns[i];
            if (column.IsRest)
            {
                // A tab line, so that the whole rest hangs from one.
                StaffWriter.WriteRest(
                    tab,
                    column,
                    scene.Piece.Sizes.TabLine((scene.Piece.Sizes.Strings + 1) / 2)
                );
            }
            else if (column.HasStem)
            {
                WriteStem(column);
            }

            if (column.Written.TiedOn)
            {
                WriteTie(column, i + 1 < columns.Length ? columns[i + 1].X : scene.Plan.EndX + 0.3);
            }
        }
    }

    private void WriteStem(Column column)
    {
        var levels = Math.Max(0, column.Written.Value.Flags - 2);
        var end = StemTop + (column.Written.Value.Halvings == 1 ? HalfNote : Length + (0.75 * levels));
        if (column.Run.Length > 1)
        {
            end =
                StemTop
                + Length
                + (0.75 * Math.Max(0, column.Run.Max(other => other.Written.Value.Flags) - 2));
        }

        tab.Line(
            Scene.Tag(column, "tab-stem"),
            new Point(column.X, StemTop),
            new Point(column.X, end),
            Pens.Stem
        );
        WriteDots(column);
        if (column.Flags > 0)
        {
            var glyph = HeadGlyphs.Flag(column.Flags, up: false);
            tab.Glyph(Scene.Tag(column, "flag"), glyph, column.X - (Pens.Stem / 2), end);
        }
        else if (column.Run.Length > 1 && column == column.Run[0])
        {
            WriteBeams(column.Run, end);
        }
    }

    private void WriteBeams(ImmutableArray<Column> run, double end)
    {
        var line = new BeamLine(run[0].X, end, run[^1].X, end);
        StemWriter.WriteBeams(tab, run, line, column => column.X, inward: -1);
    }

    // At the upper end of the stem, clear of beams and flags.
    private void WriteDots(Column column)
    {
        for (var dot = 0; dot < column.Written.Value.Dots; dot++)
        {
            var x = column.X + ColumnInk.DotGap + (dot * 2 * ColumnInk.DotGap);
            tab.Glyph(Scene.Tag(column, "dot", dot + 1), Glyphs.AugmentationDot, x, StemTop + DotDrop);
        }
    }

    // From beside the number to the stem that holds it on, under the string.
    private void WriteTie(Column column, double to)
    {
        var from = column.X + scene.Piece.Ink.NumberHalf(column);
        foreach (var head in column.Heads)
        {
            var y = scene.Piece.Sizes.TabLine(head.Tone.Place.String) + TieDrop;
            tab.Curve(
                Scene.Tag(column, "tie", head.Tone.Place.String),
                new Arc(new Point(from, y), new Point(to - TieEnd, y), TieBulge)
            );
        }
    }
}
