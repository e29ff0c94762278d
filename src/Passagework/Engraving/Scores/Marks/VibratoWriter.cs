using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Engraving.Scores;

/// <summary>Draws vibrato: a wavy line over the tab, or over a lone staff, for as long as the note is held.</summary>
internal sealed class VibratoWriter(Scene scene)
{
    private const double Gap = 0.4;
    private const double Clear = 0.3;
    private static readonly double Segment = MusicFont.Glyph(Glyphs.GuitarVibratoStroke).Advance;

    /// <summary>What the shortest wavy line takes: three waves.</summary>
    public static double Least { get; } = 3 * Segment;

    public void Write() => Row.Above(scene.Tab ?? scene.Top, Items(), Gap);

    private IEnumerable<RowItem> Items()
    {
        var columns = scene.Plan.Columns;
        for (var first = 0; first < columns.Length; )
        {
            var end = first + 1;
            while (end < columns.Length && columns[end].Note == columns[first].Note && !columns[end].Begins)
            {
                end++;
            }

            if (columns[first].Vibrato)
            {
                yield return ItemOf(columns[first], EndOf(columns[end - 1], end));
            }

            first = end;
        }
    }

    // The next note or the bar line, whichever comes first.
    private double EndOf(Column last, int next)
    {
        if (last.EndsBar)
        {
            return scene.Plan.Bars.First(bar => bar.Bar == last.Bar).EndX;
        }

        var columns = scene.Plan.Columns;
        return next < columns.Length ? columns[next].X - Pens.HalfHead : scene.Plan.EndX;
    }

    private RowItem ItemOf(Column first, double end)
    {
        var left = first.X + scene.Piece.Ink.VibratoStart(first);
        var box = Block.BoxOf(Glyphs.GuitarVibratoStroke, 1);
        // A little more than whole waves is left empty; rounding may not lose the last that has room.
        var count = Math.Max(1, (int)Math.Floor(((end - Clear - left) / Segment) + 1e-6));
        return new RowItem(
            new Box(left, box.Top, left + (count * Segment), box.Bottom),
            y =>
            {
                for (var i = 0; i < count; i++)
                {
                    var x = left - box.Left + (i * Segment);
                    var tag = Scene.Tag(first, "vibrato", i + 1);
                    (scene.Tab ?? scene.Top).Glyph(tag, Glyphs.GuitarVibratoStroke, x, y);
                }
            }
        );
    }
}
