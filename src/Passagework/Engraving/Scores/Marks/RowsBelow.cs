using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Exercises;

namespace Passagework.Engraving.Scores;

/// <summary>
/// Draws the rows under a system: strings in circles under the staff; fingers under tab alone; counts. Also the line that
/// says how notes are to sound.
/// </summary>
internal sealed class RowsBelow(Scene scene)
{
    private const double Gap = 0.7;
    private const double FigureGap = 1.4;
    private const double ChordGap = 0.2;
    private const double SoundGap = 0.5;
    private const double Hook = 0.6;
    private readonly Sizes _sizes = scene.Piece.Sizes;

    /// <summary>Strings in circles.</summary>
    public void WriteStringNumbers() =>
        Row.Below(
            scene.Top,
            scene
                .Plan.Columns.Where(column => column.StringNumber is not null)
                .Select(column =>
                    Centred(
                        scene.Top,
                        Scene.Tag(column, "string-number", Ink.Fretting),
                        column.X,
                        Glyphs.GuitarString0 + (column.StringNumber ?? 0),
                        ColumnInk.StringScale
                    )
                ),
            Gap
        );

    /// <summary>Fretting fingers under tab that has no staff over it; those of a chord from string 1 downward.</summary>
    public void WriteFingers()
    {
        if (scene.Staff is not null || !scene.Piece.Options.Fingers)
        {
            return;
        }

        var most = scene.Plan.Columns.Max(column => column.Begins ? column.Heads.Length : 0);
        for (var row = 0; row < most; row++)
        {
            Row.Below(
                scene.Bottom,
                scene
                    .Plan.Columns.Where(column => column.Begins && column.Heads.Length > row)
                    .Select(column => FingerItem(column, row)),
                row == 0 ? Gap : ChordGap
            );
        }
    }

    private RowItem FingerItem(Column column, int row)
    {
        var head = column.Heads.OrderBy(other => other.Tone.Place.String).ElementAt(row);
        var kind = string.Create(CultureInfo.InvariantCulture, $"finger-{row + 1}");
        return Centred(
            scene.Bottom,
            Scene.Tag(column, kind, Ink.Fretting) with
            {
                Kind = "finger",
            },
            column.X,
            SideMarks.FingerGlyph(head.Tone.Finger),
            _sizes.FingerScale
        );
    }

    /// <summary>Counts.</summary>
    public void WriteCounts() =>
        Row.Below(
            scene.Bottom,
            scene
                .Plan.Columns.Where(column => column.Count.Length > 0)
                .Select(column =>
                {
                    var text = scene.Piece.Ink.CountLettering(column);
                    var tag = Scene.Tag(column, "count");
                    return new RowItem(
                        text.Ink(Anchor.Middle).Moved(column.X, 0),
                        y => scene.Bottom.Text(tag, text, column.X, y, Anchor.Middle)
                    );
                }),
            // Figures of both kinds one under the other are kept apart.
            scene.Staff
                is null
            && scene.Piece.Options.Fingers
                ? FigureGap
                : Gap
        );

    /// <summary>Palm mute or let ring: words and a dashed line to the last note, over the tab or under a lone staff.</summary>
    public void WriteSound()
    {
        var word = scene.Piece.Sound switch
        {
            NoteSound.PalmMuted => "P.M.",
            NoteSound.LetRing => "let ring",
            _ => "",
        };
        var notes = scene.Plan.Columns.Where(column => !column.IsRest).ToList();
        if (word.Length == 0 || notes.Count == 0)
        {
            return;
        }

        var text = new Lettering(
            scene.Plan.Index == 0 ? word : "(" + word + ")",
            Face.SerifItalic,
            _sizes.Text
        );
        var left = notes[0].X - Pens.HalfHead;
        var ends = notes[^1].Note == scene.Piece.LastNote && !notes[^1].Written.TiedOn;
        var right = ends ? notes[^1].X + Pens.HalfHead : scene.Plan.EndX - Gap;
        var ink = text.Ink().Moved(left, 0);
        var block = scene.Bottom;
        var over = scene.Tab is not null;
        var item = new RowItem(
            ink.With(new Box(left, 0, right, 0)),
            y => WriteSound(block, text, (left, right), y, ends)
        );
        _ = over ? Row.Above(block, [item], SoundGap) : Row.Below(block, [item], SoundGap);
    }

    private void WriteSound(
        Block block,
        Lettering text,
        (double Left, double Right) reach,
        double y,
        bool ends
    )
    {
        block.Text(scene.Tag("sound"), text, reach.Left, y);
        var lineY = y - (0.25 * _sizes.Text);
        var from = new Point(reach.Left + text.Width + 0.5, lineY);
        var to = new Point(reach.Right, lineY);
        if (from.X >= to.X)
        {
            return;
        }

        block.Line(scene.Tag("sound-line"), from, to, Pens.Bracket, [0.8, 0.6]);
        if (ends)
        {
            var side = scene.Tab is not null ? Hook : -Hook;
            block.Line(scene.Tag("sound-hook"), to, to.Moved(0, side), Pens.Bracket);
        }
    }

    private static RowItem Centred(Block block, Tag tag, double middle, int glyph, double scale)
    {
        var box = Block.BoxOf(glyph, scale);
        var x = middle - box.Left - (box.Width / 2);
        return new RowItem(box.Moved(x, 0), y => block.Glyph(tag, glyph, x, y, scale));
    }
}
