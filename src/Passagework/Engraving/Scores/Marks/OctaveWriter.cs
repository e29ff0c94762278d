using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Engraving.Scores;

/// <summary>Draws <c>8va</c> with a dashed line over notes that are written an octave lower; again on each new line.</summary>
internal sealed class OctaveWriter(Scene scene, Block staff)
{
    private const double Gap = 0.6;
    private const double LineGap = 0.4;
    private const double LineUp = 0.9;
    private const double Hook = 0.75;
    private const double ToEnd = 0.3;

    public void Write() => Row.Above(staff, Items(), Gap);

    private IEnumerable<RowItem> Items()
    {
        var columns = scene.Plan.Columns.Where(column => !column.IsRest).ToList();
        for (var first = 0; first < columns.Count; )
        {
            var end = first + 1;
            while (end < columns.Count && columns[end].UnderOctave == columns[first].UnderOctave)
            {
                end++;
            }

            if (columns[first].UnderOctave)
            {
                yield return ItemOf(columns[first], columns[end - 1], GoesOn(end == columns.Count));
            }

            first = end;
        }
    }

    private bool GoesOn(bool reachesEnd) =>
        reachesEnd && scene.Plan.Next is { } next && (next.IsRest || next.UnderOctave);

    private RowItem ItemOf(Column first, Column last, bool goesOn)
    {
        var sign = Block.BoxOf(Glyphs.OttavaAlta, 1).Moved(first.X - Pens.HalfHead, 0);
        var from = sign.Right + LineGap;
        var to = goesOn ? scene.Plan.EndX - ToEnd : last.X + Pens.HalfHead;
        return new RowItem(
            sign with
            {
                Right = Math.Max(sign.Right, to),
            },
            y =>
            {
                staff.Glyph(Scene.Tag(first, "octave"), Glyphs.OttavaAlta, first.X - Pens.HalfHead, y);
                var end = new Point(to, y - LineUp);
                if (from < to)
                {
                    staff.Line(
                        Scene.Tag(first, "octave-line"),
                        new Point(from, end.Y),
                        end,
                        Pens.Bracket,
                        [0.8, 0.6]
                    );
                }

                if (from < to && !goesOn)
                {
                    staff.Line(Scene.Tag(first, "octave-hook"), end, end.Moved(0, Hook), Pens.Bracket);
                }
            }
        );
    }
}
