using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Engraving.Scores;

/// <summary>Draws staff lines, clef, key and metre, heads with what stands beside them, and rests.</summary>
internal sealed class StaffWriter(Scene scene, Block staff)
{
    private const int Lines = 5;

    public void Write()
    {
        for (var line = 0; line < Lines; line++)
        {
            staff.Line(
                scene.Tag("staff-line", line + 1, Ink.Staff),
                new Point(0, line),
                new Point(scene.Plan.EndX, line),
                Pens.StaffLine
            );
        }

        WritePrefix(scene, staff, scene.Plan.Prefix.Staff, "staff");
        foreach (var column in scene.Plan.Columns)
        {
            if (column.IsRest)
            {
                WriteRest(staff, column, StaffPlace.Height / 2);
            }
            else
            {
                WriteNote(column, column == scene.Plan.Columns[0]);
            }
        }
    }

    /// <summary>Clef, key and metre.</summary>
    public static void WritePrefix(Scene scene, Block block, ImmutableArray<PrefixSign> signs, string name)
    {
        for (var i = 0; i < signs.Length; i++)
        {
            var sign = signs[i];
            var tag = scene.Tag(sign.Kind, System.FormattableString.Invariant($"{name}-{i + 1}"));
            block.Glyph(tag, sign.Glyph, sign.X, sign.Y, sign.Scale);
        }
    }

    /// <summary>A rest, centred on its column and on a middle line; the whole rest hangs from the line above.</summary>
    public static void WriteRest(Block block, Column column, double middle)
    {
        var glyph = HeadGlyphs.Of(column);
        var box = Block.BoxOf(glyph, 1);
        var y = glyph == Glyphs.RestWhole ? middle - 1 : middle;
        block.Glyph(Scene.Tag(column, "rest"), glyph, column.X - (box.Left + (box.Width / 2)), y);
        WriteDots(block, column, box.Width / 2, middle - 0.5);
    }

    private static void WriteDots(Block block, Column column, double half, double y, int first = 1)
    {
        var width = Block.BoxOf(Glyphs.AugmentationDot, 1).Width;
        for (var dot = 0; dot < column.Written.Value.Dots; dot++)
        {
            var x = column.X + half + ColumnInk.DotGap + (dot * (width + ColumnInk.DotGap));
            block.Glyph(Scene.Tag(column, "dot", dot + first), Glyphs.AugmentationDot, x, y);
        }
    }

    private void WriteNote(Column column, bool lineStart)
    {
        var glyph = HeadGlyphs.Of(column);
        var box = Block.BoxOf(glyph, 1);
        var half = box.Width / 2;
        var shifts = column.Shifts(half);
        WriteLedgers(column, half, shifts);
        WriteSides(column, lineStart && column.Written.TiedBack);
        for (var i = 0; i < column.Heads.Length; i++)
        {
            var x = column.X + shifts[i] - half - box.Left;
            staff.Glyph(Scene.Tag(column, "head", i + 1), glyph, x, column.Heads[i].Y);
        }

        if (column.Written.Value.Dots == 0)
        {
            return;
        }

        // In the space at the note, above it where the note is on a line; one for heads that share the space.
        var spaces = column.Heads.Select(head => head.Position % 2 == 0 ? head.Y - 0.5 : head.Y).Distinct();
        var first = 1;
        foreach (var y in spaces)
        {
            WriteDots(staff, column, half + Math.Max(0, shifts.Max()), y, first);
            first += column.Written.Value.Dots;
        }
    }

    private void WriteLedgers(Column column, double half, double[] shifts)
    {
        var (low, high) = (column.Heads[0].Position, column.Heads[^1].Position);
        var left = column.X - half - Pens.LedgerOver + Math.Min(0, shifts.Min());
        var right = column.X + half + Pens.LedgerOver + Math.Max(0, shifts.Max());
        for (var line = StaffPlace.FirstLedger; line <= Math.Max(-low, high); line += 2)
        {
            foreach (var side in new[] { -1, 1 }.Where(side => line <= side * (side < 0 ? low : high)))
            {
                var y = StaffPlace.Y(side * line);
                var tag = Scene.Tag(column, "ledger", side * line);
                staff.Line(tag, new Point(left, y), new Point(right, y), Pens.Ledger);
            }
        }
    }

    private void WriteSides(Column column, bool restated)
    {
        var fingers = scene.Piece.Options.Fingers && column.Begins;
        var scale = scene.Piece.Sizes.FingerScale;
        var sides = scene.Piece.Ink.Sides(column, restated);
        var part = 0;
        for (var i = 0; i < column.Heads.Length; i++)
        {
            var head = column.Heads[i];
            foreach (var (glyph, x) in head.Sign.ShownAt(restated) ? SideMarks.SignParts(head.Sign) : [])
            {
                var tag = Scene.Tag(column, "accidental", ++part);
                staff.Glyph(tag, glyph, column.X + sides.SignX[i] + x, head.Y);
            }

            if (fingers)
            {
                var glyph = SideMarks.FingerGlyph(head.Tone.Finger);
                var box = Block.BoxOf(glyph, scale);
                var tag = Scene.Tag(column, "finger", i + 1, Ink.Fretting);
                staff.Glyph(
                    tag,
                    glyph,
                    column.X + sides.FingerX[i],
                    head.Y - box.Top - (box.Height / 2),
                    scale
                );
            }
        }
    }
}
