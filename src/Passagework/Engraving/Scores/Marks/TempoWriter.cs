using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Setting;
using Passagework.Notation;

namespace Passagework.Engraving.Scores;

/// <summary>Draws the tempo mark over the first system: the felt beat, where to begin, an arrow to the goal; the swing.</summary>
internal sealed class TempoWriter(Scene scene)
{
    private const double Gap = 0.8;
    private const double NoteScale = 0.8;
    private const double Arrow = 2.2;
    private const double ArrowHead = 0.55;
    private const double Space = 0.5;

    private readonly Block _block = scene.Top;
    private readonly double _em = scene.Piece.Sizes.Numeral;
    private double _x;
    private double _y;
    private int _part;

    public void Write()
    {
        var rhythm = scene.Piece.Realization.Line.Recipe.Rhythm;
        var start = scene.Piece.Options.StartBpm ?? rhythm.TempoBpm;
        var swings = !rhythm.Swing.IsStraight;
        if (scene.Plan.Index > 0 || (start is null && !swings))
        {
            return;
        }

        var room = new Box(0, -3 * NoteScale, scene.Plan.EndX, 0.2);
        _y = _block.FreeAbove(room.Left, room.Right, Gap) - room.Bottom;
        if (start is { } bpm)
        {
            WriteNote(NoteValue.UpTo(rhythm.Meter.Beat, mostDots: 1).First());
            WriteText("= " + TempoFigure.Of(bpm));
            if (scene.Piece.Options.GoalBpm is { } goal)
            {
                WriteArrow();
                WriteText(TempoFigure.Of(goal));
            }
        }

        if (swings)
        {
            _x += _x > 0 ? 2 * Space : 0;
            var share = rhythm.Swing.Share;
            WriteText(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"swing {share.Numerator} : {share.Denominator - share.Numerator}"
                )
            );
        }
    }

    private void WriteNote(NoteValue beat)
    {
        var glyph = beat.Halvings switch
        {
            1 => Glyphs.MetNoteHalfUp,
            2 => Glyphs.MetNoteQuarterUp,
            3 => Glyphs.MetNote8thUp,
            _ => Glyphs.MetNote16thUp,
        };
        WriteGlyph(glyph);
        if (beat.Dots > 0)
        {
            _x -= Space / 2;
            WriteGlyph(Glyphs.MetAugmentationDot);
        }
    }

    private void WriteGlyph(int glyph)
    {
        var box = Block.BoxOf(glyph, NoteScale);
        _block.Glyph(scene.Tag("tempo", ++_part), glyph, _x - box.Left, _y, NoteScale);
        _x += box.Width + Space;
    }

    private void WriteText(string text)
    {
        var lettering = new Lettering(text, Face.SansMedium, _em);
        _block.Text(scene.Tag("tempo", ++_part), lettering, _x, _y);
        _x += lettering.Width + Space;
    }

    private void WriteArrow()
    {
        var y = _y - (0.3 * _em);
        var end = _x + Arrow;
        _block.Line(
            scene.Tag("tempo", ++_part),
            new Point(_x, y),
            new Point(end - ArrowHead, y),
            Pens.Bracket
        );
        _block.Figure(
            scene.Tag("tempo", ++_part),
            new Point(end, y),
            new Point(end - (2 * ArrowHead), y - (ArrowHead / 1.5)),
            new Point(end - (2 * ArrowHead), y + (ArrowHead / 1.5))
        );
        _x = end + Space;
    }
}
