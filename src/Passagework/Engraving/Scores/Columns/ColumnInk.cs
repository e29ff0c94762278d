using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Exercises;

namespace Passagework.Engraving.Scores;

/// <summary>Rows along a system in which marks of neighbouring columns could meet.</summary>
internal enum Lane
{
    /// <summary>Heads with accidentals, fingers, dots, flags; rests.</summary>
    Staff,

    /// <summary>Tab numbers.</summary>
    Tab,

    /// <summary>Counts.</summary>
    Count,

    /// <summary>Strokes.</summary>
    Stroke,

    /// <summary>p i m a.</summary>
    Pluck,

    /// <summary>Strings in circles.</summary>
    StringNumber,

    /// <summary>Letters of groups.</summary>
    Group,

    /// <summary>Position numerals.</summary>
    Position,

    /// <summary>Chord symbols.</summary>
    Chord,
}

/// <summary>How far a column's marks reach to both sides of its centre in each lane.</summary>
internal sealed class ColumnInk(ScoreOptions options, Sizes sizes)
{
    /// <summary>From a head to the first dot, and from dot to dot.</summary>
    public const double DotGap = 0.5;

    private const double LineOver = 0.15;
    private const double BracketScale = 0.75;
    private const double RakedApart = 0.35;

    /// <summary>Room that is kept for the line of a slide.</summary>
    public const double SlideRoom = 1.0;

    private readonly bool _staff = options.Layout is ScoreLayout.StaffAndTab or ScoreLayout.Staff;
    private readonly bool _tab = options.Layout is not ScoreLayout.Staff;

    /// <summary>The lanes, nearest the staff first.</summary>
    public static ReadOnlySpan<Lane> Lanes =>
        [
            Lane.Staff,
            Lane.Tab,
            Lane.Count,
            Lane.Stroke,
            Lane.Pluck,
            Lane.StringNumber,
            Lane.Group,
            Lane.Position,
            Lane.Chord,
        ];

    /// <summary>Reach to the left and to the right; null where the column has nothing in the lane.</summary>
    public (double Left, double Right)? Of(Column column, Lane lane, bool lineStart = false) =>
        lane switch
        {
            Lane.Staff => Staff(column, lineStart),
            Lane.Tab => Tab(column, lineStart),
            Lane.Count => Text(CountLettering(column), Anchor.Middle),
            Lane.Stroke when column.Stroke != Stroke.None => Centred(StrokeGlyph(column.Stroke), 1),
            Lane.Pluck when !column.Plucks.IsEmpty => Centred(
                column.Plucks.Select(StrokeGlyph).MaxBy(glyph => Block.BoxOf(glyph, 1).Width),
                1
            ),
            Lane.StringNumber when column.StringNumber is { } number => Centred(
                Glyphs.GuitarString0 + number,
                StringScale
            ),
            Lane.Group => FromHead(new Lettering(column.GroupLetter ?? "", Face.SerifItalic, sizes.Text)),
            Lane.Position => FromHead(new Lettering(column.Position ?? "", Face.Serif, sizes.Numeral)),
            Lane.Chord when column.Chords is [{ Share: 0 } chord, ..] => FromHead(
                new Lettering(chord.Text, Face.SansMedium, sizes.ChordEm)
            ),
            _ => null,
        };

    /// <summary>Scale of strings in circles.</summary>
    public static double StringScale => 0.8;

    /// <summary>The number on the tab.</summary>
    public static string TabText(Head head) => head.Tone.Place.Fret.ToString(CultureInfo.InvariantCulture);

    /// <summary>A bracket around the number of a held note that begins a line; low enough for neighbouring strings.</summary>
    public Lettering Bracket(string sign) => new(sign, Face.Sans, BracketScale * sizes.DigitEm);

    /// <summary>A count: the beats heavier than what lies between.</summary>
    public Lettering CountLettering(Column column) =>
        new(column.Count, column.OnBeat ? Face.SansBold : Face.Sans, sizes.Text);

    /// <summary>The sign of a stroke or a plucking finger.</summary>
    public static int StrokeGlyph(Stroke stroke) =>
        stroke switch
        {
            Stroke.Down => Glyphs.StringsDownBow,
            Stroke.Up => Glyphs.StringsUpBow,
            Stroke.Thumb => Glyphs.FingeringPLower,
            Stroke.Index => Glyphs.FingeringILower,
            Stroke.Middle => Glyphs.FingeringMLower,
            _ => Glyphs.FingeringALower,
        };

    /// <summary>Half of what the widest tab number of a column takes of its line.</summary>
    public double NumberHalf(Column column, bool held = false)
    {
        var half = 0.0;
        foreach (var head in column.Heads)
        {
            half = Math.Max(half, TabHalf(head, held));
        }

        return half + LineOver;
    }

    /// <summary>Where a bend begins: right of all else of the note in the lane.</summary>
    public double BendStart(Column column, Lane lane) =>
        lane == Lane.Staff ? StaffRight(column) : NumberHalf(column);

    /// <summary>Where vibrato begins: over the note, or right of its bend.</summary>
    public double VibratoStart(Column column)
    {
        if (column.Bend is null)
        {
            return -Pens.HalfHead;
        }

        return _tab
            ? BendStart(column, Lane.Tab) + BendRoom.OnTab(column.Bend, sizes)
            : BendStart(column, Lane.Staff) + BendRoom.OnStaff(column.Bend);
    }

    /// <summary>A muted string of a rake: its place left of the note's own number.</summary>
    public double RakedX(Head head, int stepsBack) =>
        -(TabHalf(head, held: false) + (stepsBack * (DeadWidth + RakedApart)) - (DeadWidth / 2));

    /// <summary>What stands left of the heads of a column.</summary>
    public SideMarks Sides(Column column, bool restated) =>
        column.Sides(restated, options.Fingers && column.Begins ? sizes.FingerScale : null);

    private double DeadWidth => new Lettering("X", Face.SansBold, sizes.DigitEm).Ink().Width;

    private (double Left, double Right)? Staff(Column column, bool lineStart)
    {
        if (!_staff)
        {
            return null;
        }

        var half = Block.BoxOf(HeadGlyphs.Of(column), 1).Width / 2;
        if (column.IsRest)
        {
            return (half, half + Dots(column));
        }

        var left = Sides(column, lineStart && column.Written.TiedBack).Left;
        left += column.Into == Slur.Slide ? SlideRoom : 0;
        var right = StaffRight(column) + BendRoom.OnStaff(column.Bend);
        return (left, _tab ? right : Math.Max(right, VibratoRight(column)));
    }

    private static double StaffRight(Column column)
    {
        var half = Block.BoxOf(HeadGlyphs.Of(column), 1).Width / 2;
        var right = half + Math.Max(0, column.Shifts(half).Max());
        var ledgers = column.OnLedgers ? Pens.LedgerOver : 0;
        return Math.Max(right + Math.Max(ledgers, Dots(column)), Flag(column));
    }

    private double VibratoRight(Column column) =>
        column.Vibrato ? VibratoStart(column) + VibratoWriter.Least : 0;

    private static double Dots(Column column) =>
        column.Written.Value.Dots * (DotGap + Block.BoxOf(Glyphs.AugmentationDot, 1).Width);

    private static double Flag(Column column)
    {
        if (column.Flags == 0)
        {
            return 0;
        }

        var width = Block.BoxOf(HeadGlyphs.Flag(column.Flags, column.Up), 1).Right;
        return (column.Up ? Pens.HalfHead - Pens.Stem : -Pens.HalfHead) + width;
    }

    private (double Left, double Right)? Tab(Column column, bool lineStart)
    {
        if (!_tab || column.IsRest)
        {
            return !_tab || options.Layout != ScoreLayout.TabWithRhythm
                ? null
                : (Pens.HalfHead, Pens.HalfHead + Dots(column));
        }

        var half = NumberHalf(column, lineStart && column.Written.TiedBack);
        var raked = column.Raked.Length * (DeadWidth + RakedApart);
        var slide = column.Into == Slur.Slide ? SlideRoom : 0;
        var rhythm = options.Layout == ScoreLayout.TabWithRhythm;
        var right = Math.Max(half + BendRoom.OnTab(column.Bend, sizes), VibratoRight(column));
        return (half + raked + slide, rhythm ? Math.Max(right, RhythmRight(column)) : right);
    }

    // Under tab alone stems stand at the centre of the numbers, with flags as of stems that point down.
    private static double RhythmRight(Column column) =>
        column.Flags > 0 ? Block.BoxOf(HeadGlyphs.Flag(column.Flags, up: false), 1).Right : Dots(column);

    private double TabHalf(Head head, bool held) =>
        (new Lettering(TabText(head), Face.SansBold, sizes.DigitEm).Width / 2)
        + (held ? Bracket("(").Width : 0);

    // Texts that begin at the left edge of the head.
    private static (double, double)? FromHead(Lettering text) =>
        text.Text.Length == 0 ? null : (Pens.HalfHead, text.Width - Pens.HalfHead);

    private static (double, double) Centred(int glyph, double scale)
    {
        var half = Block.BoxOf(glyph, scale).Width / 2;
        return (half, half);
    }

    private static (double, double)? Text(Lettering text, Anchor anchor)
    {
        if (text.Text.Length == 0)
        {
            return null;
        }

        var ink = text.Ink(anchor);
        return (-ink.Left, ink.Right);
    }
}
