using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Notation;

namespace Passagework.Engraving.Scores;

/// <summary>Draws stems, flags and beams of a staff.</summary>
internal sealed class StemWriter(Scene scene, Block staff)
{
    public void Write()
    {
        foreach (var column in scene.Plan.Columns.Where(column => column.HasStem))
        {
            if (column.Run.Length == 1)
            {
                WriteFlagged(column);
            }
            else if (column == column.Run[0])
            {
                WriteRun(column.Run);
            }
        }
    }

    /// <summary>Where the middle of a stem stands: its outer edge is that of the head.</summary>
    public static double StemX(Column column) =>
        column.X + (column.Up ? Pens.HalfHead - (Pens.Stem / 2) : (Pens.Stem / 2) - Pens.HalfHead);

    /// <summary>Draws the beams of a run.</summary>
    /// <param name="block">Where.</param>
    /// <param name="run">The columns under it.</param>
    /// <param name="line">The outermost beam.</param>
    /// <param name="xOf">Where the middle of a column's stem stands.</param>
    /// <param name="inward">1 where further beams lie below the first, −1 where above.</param>
    public static void WriteBeams(
        Block block,
        ImmutableArray<Column> run,
        BeamLine line,
        Func<Column, double> xOf,
        int inward
    )
    {
        for (var level = 0; run.Any(column => column.Beams.Length > level); level++)
        {
            var offset = inward * level * (Pens.Beam + Pens.BeamGap);
            var from = double.NaN;
            for (var i = 0; i < run.Length; i++)
            {
                if (run[i].Beams.Length <= level)
                {
                    continue;
                }

                var mark = run[i].Beams[level];
                var (left, right) = (xOf(run[i]) - (Pens.Stem / 2), xOf(run[i]) + (Pens.Stem / 2));
                from = mark is BeamMark.Begin or BeamMark.ForwardHook ? left : from;
                from = mark == BeamMark.BackwardHook ? right - Hook(run, i, -1, xOf) : from;
                var to = mark == BeamMark.ForwardHook ? left + Hook(run, i, 1, xOf) : right;
                if (mark is not (BeamMark.Begin or BeamMark.Continue))
                {
                    var tag = Scene.Tag(run[i], "beam", level + 1);
                    block.Bar(
                        tag,
                        new Point(from, line.At(from) + offset),
                        new Point(to, line.At(to) + offset),
                        Pens.Beam
                    );
                }
            }
        }
    }

    // A head's width, at most half the way to the neighbour.
    private static double Hook(ImmutableArray<Column> run, int at, int side, Func<Column, double> xOf) =>
        Math.Min(2 * Pens.HalfHead, Math.Abs(xOf(run[at + side]) - xOf(run[at])) / 2);

    private void WriteRun(ImmutableArray<Column> run)
    {
        var stems = run.Select(column => new BeamedStem(
                StemX(column),
                Nearest(column, column.Up),
                column.Written.Value.Flags
            ))
            .ToArray();
        var line = BeamSlant.Line(stems, run[0].Up);
        foreach (var column in run)
        {
            WriteStem(column, line.At(StemX(column)));
        }

        WriteBeams(staff, run, line, StemX, run[0].Up ? 1 : -1);
    }

    // The glyph of a flag is made for the end of a usual stem; its anchor tells how far the stem goes on, outward.
    private void WriteFlagged(Column column)
    {
        var outward = column.Up ? -1 : 1;
        var end =
            StaffPlace.Y(Nearest(column, column.Up))
            + (outward * StemRules.Length(Nearest(column, column.Up), column.Up, 0));
        var stemEnd = end;
        if (column.Flags > 0)
        {
            var glyph = HeadGlyphs.Flag(column.Flags, column.Up);
            stemEnd -= MusicFont.Glyph(glyph).Anchors[column.Up ? "stemUpNW" : "stemDownSW"].Y;
            staff.Glyph(Scene.Tag(column, "flag"), glyph, StemX(column) - (Pens.Stem / 2), end);
        }

        WriteStem(column, stemEnd);
    }

    private void WriteStem(Column column, double end)
    {
        // From the far side of a chord to the end of the stem.
        var far = column.Up
            ? column.Heads.Min(head => head.Position)
            : column.Heads.Max(head => head.Position);
        var anchors = MusicFont.Glyph(HeadGlyphs.Of(column)).Anchors;
        var start = StaffPlace.Y(far) - (column.Up ? anchors["stemUpSE"].Y : anchors["stemDownNW"].Y);
        staff.Line(
            Scene.Tag(column, "stem"),
            new Point(StemX(column), start),
            new Point(StemX(column), end),
            Pens.Stem
        );
    }

    /// <summary>The note of a column that is nearest to the end of a stem which points up or down.</summary>
    public static int Nearest(Column column, bool up) =>
        up ? column.Heads.Max(head => head.Position) : column.Heads.Min(head => head.Position);
}
