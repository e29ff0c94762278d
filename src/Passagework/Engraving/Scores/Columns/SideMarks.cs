using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Engraving.Scores;

/// <summary>What stands left of the heads of a column: where accidentals and fingers lie. Spaces from the column.</summary>
/// <param name="SignX">Of each head the left edge of its accidental; empty where none is shown.</param>
/// <param name="FingerX">Of each head the origin of its finger; empty where none is written.</param>
/// <param name="Left">How far all of it reaches to the left, above 0.</param>
internal sealed record SideMarks(double[] SignX, double[] FingerX, double Left)
{
    private const double Clear = 0.25;
    private const double LedgerClear = 0.1;
    private const double Between = 0.1;
    private static readonly int[] Fingers =
    [
        Glyphs.Fingering0,
        Glyphs.Fingering1,
        Glyphs.Fingering2,
        Glyphs.Fingering3,
        Glyphs.Fingering4,
    ];

    /// <summary>The sign of a finger, 0 for an open string.</summary>
    public static int FingerGlyph(int finger) => Fingers[finger];

    /// <summary>The sign of an alteration; two signs stand for three flats or sharps.</summary>
    public static ReadOnlySpan<int> SignGlyphs(int alteration) =>
        alteration switch
        {
            -3 => [Glyphs.AccidentalDoubleFlat, Glyphs.AccidentalFlat],
            -2 => [Glyphs.AccidentalDoubleFlat],
            -1 => [Glyphs.AccidentalFlat],
            0 => [Glyphs.AccidentalNatural],
            1 => [Glyphs.AccidentalSharp],
            2 => [Glyphs.AccidentalDoubleSharp],
            _ => [Glyphs.AccidentalSharp, Glyphs.AccidentalDoubleSharp],
        };

    /// <summary>Lays them out: accidentals next to the heads, fingers left of them, further out where they would meet.</summary>
    /// <param name="column">A column with heads.</param>
    /// <param name="halfHead">Half a head's width.</param>
    /// <param name="lineStart">Whether accidentals of held notes are shown again.</param>
    /// <param name="fingerScale">Scale of the fingers; null for none.</param>
    public static SideMarks Of(Column column, double halfHead, bool lineStart, double? fingerScale)
    {
        var heads = column.Heads;
        var ledgers = column.OnLedgers;
        var edge = halfHead - Math.Min(0, column.Shifts(halfHead).Min());
        var reach = edge + (ledgers ? Pens.LedgerOver : 0);
        var signX = IsSigned(heads, lineStart) ? new double[heads.Length] : [];
        var fingerX = fingerScale is null ? [] : new double[heads.Length];
        var start = edge + (ledgers ? Pens.LedgerOver + LedgerClear - Clear : 0);
        var signs = new SideStack(start);
        for (var i = heads.Length - 1; i >= 0; i--)
        {
            if (heads[i].Sign.ShownAt(lineStart))
            {
                signX[i] = -signs.Put(SignInk(heads[i]), Clear);
            }
        }

        var fingers = new SideStack(signs.Reach);
        for (var i = heads.Length - 1; i >= 0 && fingerScale is not null; i--)
        {
            var ink = Block.BoxOf(FingerGlyph(heads[i].Tone.Finger), fingerScale.Value);
            var middle = heads[i].Y;
            fingerX[i] =
                -fingers.Put(
                    new Box(0, middle - (ink.Height / 2), ink.Width, middle + (ink.Height / 2)),
                    Clear
                ) - ink.Left;
        }

        return new SideMarks(signX, fingerX, fingers.Reach > start ? fingers.Reach : reach);
    }

    private static bool IsSigned(ImmutableArray<Head> heads, bool lineStart)
    {
        foreach (var head in heads)
        {
            if (head.Sign.ShownAt(lineStart))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The glyphs of an accidental with their places from its left edge.</summary>
    public static IEnumerable<(int Glyph, double X)> SignParts(HeadSign sign)
    {
        var x = 0.0;
        foreach (var glyph in SignWithBrackets(sign))
        {
            var box = Block.BoxOf(glyph, 1);
            yield return (glyph, x - box.Left);
            x += box.Width + Between;
        }
    }

    private static Box SignInk(Head head)
    {
        var boxes = SignWithBrackets(head.Sign).Select(glyph => Block.BoxOf(glyph, 1)).ToList();
        return new Box(
            0,
            head.Y + boxes.Min(box => box.Top),
            SignWidth(head.Sign),
            head.Y + boxes.Max(box => box.Bottom)
        );
    }

    private static double SignWidth(HeadSign sign) =>
        SignWithBrackets(sign).Sum(glyph => Block.BoxOf(glyph, 1).Width + Between) - Between;

    private static int[] SignWithBrackets(HeadSign sign) =>
        sign.Courtesy
            ? [Glyphs.AccidentalParensLeft, .. SignGlyphs(sign.Alteration), Glyphs.AccidentalParensRight]
            : [.. SignGlyphs(sign.Alteration)];
}

/// <summary>Stacks marks to the left of a chord, each as near as those put before allow.</summary>
internal struct SideStack
{
    private readonly double _start;

    // Most columns have one mark.
    private (Box Ink, double Left)? _first;
    private List<(Box Ink, double Left)>? _more;

    /// <summary>A stack whose nearest marks begin so far left of the column.</summary>
    public SideStack(double start)
    {
        _start = start;
        Reach = start;
    }

    /// <summary>How far all of them reach.</summary>
    public double Reach { get; private set; }

    /// <summary>Puts one; answers how far its left edge lies left of the column.</summary>
    public double Put(Box ink, double clear)
    {
        var right = _first is { } first ? Beyond(_start, ink, first) : _start;
        foreach (var other in _more ?? [])
        {
            right = Beyond(right, ink, other);
        }

        var reach = right + clear + ink.Width;
        if (_first is null)
        {
            _first = (ink, reach);
        }
        else
        {
            (_more ??= []).Add((ink, reach));
        }

        Reach = Math.Max(Reach, reach);
        return reach;
    }

    private static double Beyond(double right, Box ink, (Box Ink, double Left) other) =>
        ink.Top < other.Ink.Bottom && other.Ink.Top < ink.Bottom ? Math.Max(right, other.Left) : right;
}
