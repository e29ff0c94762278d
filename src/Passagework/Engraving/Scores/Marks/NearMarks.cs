using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Exercises;

namespace Passagework.Engraving.Scores;

/// <summary>Draws what stands by one note on the side of its head: staccato dots, accents, plucking fingers.</summary>
internal sealed class NearMarks(Scene scene)
{
    private const double Gap = 0.35;

    /// <summary>Staccato dots: the nearest to the head, inside the staff in a space.</summary>
    public void WriteStaccato()
    {
        if (scene.Piece.Sound != NoteSound.Staccato || scene.Staff is not { } staff)
        {
            return;
        }

        foreach (var column in scene.Plan.Columns.Where(column => column.Begins && !column.Written.TiedOn))
        {
            var side = column.Up ? 1 : -1;
            var head = column.Up ? column.Heads[0] : column.Heads[^1];
            var inStaff = Math.Abs(head.Position) < StaffPlace.FirstLedger - 2;
            var away = head.Position % 2 == 0 && inStaff ? 1.5 : 1;
            var glyph = column.Up ? Glyphs.ArticStaccatoBelow : Glyphs.ArticStaccatoAbove;
            var box = Block.BoxOf(glyph, 1);
            var middle = head.Y + (side * away);
            staff.Glyph(
                Scene.Tag(column, "staccato"),
                glyph,
                column.X - box.Left - (box.Width / 2),
                middle - box.Top - (box.Height / 2)
            );
        }
    }

    /// <summary>Accents: outside the staff, nearer the note than strokes; above where there is only tab.</summary>
    public void WriteAccents()
    {
        foreach (var column in scene.Plan.Columns.Where(column => column.Accent))
        {
            var below = IsBelow(column);
            var glyph = below ? Glyphs.ArticAccentBelow : Glyphs.ArticAccentAbove;
            WriteOutside(Scene.Tag(column, "accent"), column, glyph, below);
        }
    }

    /// <summary>Plucking fingers: outside accents; those of a chord as high and low as its tones.</summary>
    public void WritePlucks()
    {
        foreach (var column in scene.Plan.Columns)
        {
            var below = IsBelow(column);
            var plucks = below ? column.Plucks.Reverse() : column.Plucks;
            var part = 0;
            foreach (var glyph in plucks.Select(ColumnInk.StrokeGlyph))
            {
                WriteOutside(Scene.Tag(column, "pluck", ++part, Ink.Picking), column, glyph, below);
            }
        }
    }

    private bool IsBelow(Column column) => scene.Staff is not null && column.Up;

    private void WriteOutside(Tag tag, Column column, int glyph, bool below)
    {
        var block = scene.Top;
        var box = Block.BoxOf(glyph, 1);
        var x = column.X - box.Left - (box.Width / 2);
        var (left, right) = (x + box.Left, x + box.Right);
        var y = below
            ? block.FreeBelow(left, right, Gap) - box.Top
            : block.FreeAbove(left, right, Gap) - box.Bottom;
        block.Glyph(tag, glyph, x, y);
    }
}
