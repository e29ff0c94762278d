using System.Collections.Immutable;
using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Exercises;
using Passagework.Notation;

namespace Passagework.Engraving.Scores;

/// <summary>Draws the rows over a system, nearest first: strokes, octave lines, group brackets, words, positions, chords, endings, bar number.</summary>
internal sealed class RowsAbove(Scene scene)
{
    private const double StrokeGap = 0.6;
    private const double GroupGap = 0.6;
    private const double TextGap = 0.6;
    private const double ChordGap = 0.8;
    private const double ChordLeast = 1.5;
    private const double Hook = 0.75;
    private const double ShortestLine = 0.6;
    private const double EndingHeight = 2.2;
    private const double LeftEdge = 0.3;

    private readonly Sizes _sizes = scene.Piece.Sizes;

    public void Write()
    {
        WriteStrokes();
        if (scene.Staff is { } staff)
        {
            new OctaveWriter(scene, staff).Write();
        }

        var groups = WriteGroups();
        WriteBarNumber();
        Row.Above(scene.Top, Texts(column => column.Words, "words", Face.SerifItalic, _sizes.Text), TextGap);
        WritePositions(groups);
        var chords = Texts(column => column.Chords, "chord", Face.SansMedium, _sizes.ChordEm);
        Row.Above(scene.Top, chords, ChordGap, ChordLeast);
        Row.Above(scene.Top, Endings(), TextGap);
    }

    private void WriteStrokes() =>
        Row.Above(
            scene.Top,
            scene
                .Plan.Columns.Where(column => column.Stroke != Stroke.None)
                .Select(column =>
                {
                    var glyph = ColumnInk.StrokeGlyph(column.Stroke);
                    var box = Block.BoxOf(glyph, 1);
                    var x = column.X - box.Left - (box.Width / 2);
                    var tag = Scene.Tag(column, "stroke", Ink.Picking);
                    return new RowItem(box.Moved(x, 0), y => scene.Top.Glyph(tag, glyph, x, y));
                }),
            StrokeGap
        );

    private double? WriteGroups()
    {
        var items = new List<RowItem>();
        Column? first = null;
        Column? last = null;
        foreach (var column in scene.Plan.Columns.Where(column => !column.IsRest))
        {
            if (first is not null && last is not null && column.Group != first.Group)
            {
                items.Add(GroupItem(first, last, ends: true));
                first = null;
            }

            first ??= column.Group is null ? null : column;
            last = column;
        }

        if (first is not null && last is not null)
        {
            items.Add(
                GroupItem(first, last, ends: scene.Plan.Next is not { } next || next.Group != first.Group)
            );
        }

        return Row.Above(scene.Top, items, GroupGap);
    }

    // A letter at its first note, a line over it and one hook at its end; in a later system without the letter.
    private RowItem GroupItem(Column first, Column last, bool ends)
    {
        var (left, right) = (
            first.X - Pens.HalfHead,
            ends ? last.X + Pens.HalfHead : scene.Plan.EndX - LeftEdge
        );
        var letter = new Lettering(first.GroupLetter ?? "", Face.SerifItalic, _sizes.Text);
        var lineLeft = first.GroupLetter is null
            ? left
            : left + Math.Max(letter.Width, letter.Ink().Right) + 0.25;
        var lineUp = 0.28 * _sizes.Text;
        // All letters and hooks fill the same height, so that the row does not depend on which there are.
        var ink = new Box(left, -0.75 * _sizes.Text, Math.Max(right, lineLeft), 0.3 * _sizes.Text);
        return new RowItem(
            ink,
            y =>
            {
                if (first.GroupLetter is not null)
                {
                    scene.Top.Text(Scene.Tag(first, "group"), letter, left, y);
                }

                if (lineLeft < right - ShortestLine)
                {
                    WriteGroupLine(first, (lineLeft, right), y - lineUp, ends);
                }
            }
        );
    }

    private void WriteGroupLine(Column first, (double Left, double Right) reach, double y, bool ends)
    {
        var (from, to) = (new Point(reach.Left, y), new Point(reach.Right, y));
        scene.Top.Line(Scene.Tag(first, "group-line", scene.Plan.Index + 1), from, to, Pens.Bracket);
        if (ends)
        {
            var half = Pens.Bracket / 2;
            var (top, bottom) = (to.Moved(-half, -half), to.Moved(-half, Hook));
            scene.Top.Line(Scene.Tag(first, "group-hook"), top, bottom, Pens.Bracket);
        }
    }

    private void WriteBarNumber()
    {
        var first = scene.Plan.Columns[0];
        if (!scene.Piece.Options.BarNumbers || scene.Plan.Index == 0 || !scene.Plan.StartsBar)
        {
            return;
        }

        var number = scene.Piece.Written.NumberOf(first.Bar).ToString(CultureInfo.InvariantCulture);
        var text = new Lettering(number, Face.Sans, _sizes.Text);
        Row.Above(scene.Top, [Item(scene.Tag("bar-number"), text, 0)], TextGap);
    }

    // The first position, before which only open strings can sound, stands in the margin of the first line, level with the group brackets where there is room.
    private void WritePositions(double? groups)
    {
        var columns = scene.Plan.Columns.Where(column => column.Position is not null).ToList();
        if (scene.Plan.Index == 0 && columns is [{ IsFirstPosition: true } start, ..])
        {
            columns.RemoveAt(0);
            var item = Item(PositionTag(start), Numeral(start), LeftEdge);
            Row.Above(scene.Top, [item], TextGap, atLeast: -(groups ?? 0));
        }

        Row.Above(
            scene.Top,
            columns.Select(column => Item(PositionTag(column), Numeral(column), column.X - Pens.HalfHead)),
            TextGap
        );
    }

    private static Tag PositionTag(Column column) => Scene.Tag(column, "position", Ink.Fretting);

    private Lettering Numeral(Column column) => new(column.Position ?? "", Face.Serif, _sizes.Numeral);

    private IEnumerable<RowItem> Texts(
        Func<Column, ImmutableArray<PlacedText>> texts,
        string kind,
        Face face,
        double em
    )
    {
        for (var i = 0; i < scene.Plan.Columns.Length; i++)
        {
            var column = scene.Plan.Columns[i];
            var next = i + 1 < scene.Plan.Columns.Length ? scene.Plan.Columns[i + 1].X : scene.Plan.EndX;
            var part = 0;
            foreach (var text in texts(column))
            {
                var lettering = new Lettering(text.Text, face, em);
                var x = column.X - Pens.HalfHead + (text.Share * (next - column.X));
                // What would run over the end of the line moves back.
                x = Math.Max(
                    0,
                    Math.Min(x, (scene.Piece.Options.WidthMm / _sizes.SpaceMm) - lettering.Width)
                );
                yield return Item(Scene.Tag(column, kind, ++part), lettering, x);
            }
        }
    }

    private RowItem Item(Tag tag, Lettering text, double x) =>
        new(text.Ink().Moved(x, 0), y => scene.Top.Text(tag, text, x, y));

    private IEnumerable<RowItem> Endings()
    {
        foreach (var ending in scene.Piece.Options.Endings)
        {
            var bars = scene
                .Plan.Bars.Where(bar => Within(ending, scene.Piece.Written.NumberOf(bar.Bar)))
                .ToList();
            if (bars.Count > 0)
            {
                yield return EndingItem(ending, bars);
            }
        }
    }

    private static bool Within(ScoreEnding ending, int bar) => ending.First <= bar && bar <= ending.Last;

    private RowItem EndingItem(ScoreEnding ending, List<PlannedBar> bars)
    {
        var number = scene.Piece.Written.NumberOf(bars[0].Bar);
        var begins = number == ending.First;
        var ends = scene.Piece.Written.NumberOf(bars[^1].Bar) == ending.Last;
        var (left, right) = (bars[0].StartX + 0.2, bars[^1].EndX - 0.2);
        var text = new Lettering(ending.Text, Face.Sans, _sizes.Text);
        return new RowItem(
            new Box(left, -EndingHeight, right, 0),
            y =>
            {
                var (top, part) = (y - EndingHeight, number);
                scene.Top.Line(
                    scene.Tag("ending-line", part),
                    new Point(left, top),
                    new Point(right, top),
                    Pens.Ending
                );
                if (begins)
                {
                    scene.Top.Line(
                        scene.Tag("ending-start", part),
                        new Point(left, top),
                        new Point(left, y),
                        Pens.Ending
                    );
                    scene.Top.Text(scene.Tag("ending", part), text, left + 0.5, y - 0.4);
                }

                if (ends)
                {
                    scene.Top.Line(
                        scene.Tag("ending-end", part),
                        new Point(right, top),
                        new Point(right, y),
                        Pens.Ending
                    );
                }
            }
        );
    }
}
