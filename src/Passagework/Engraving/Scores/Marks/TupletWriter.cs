using System.Collections.Immutable;
using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Notation;

namespace Passagework.Engraving.Scores;

/// <summary>Draws the numbers of tuplets, with brackets only where beams don't show the tuplet.</summary>
internal sealed class TupletWriter(Scene scene)
{
    private const double Clear = 0.75;
    private const double NumberClear = 0.4;
    private const double Hook = 0.75;
    private const double Scale = 0.9;
    private const double Beside = 0.6;

    public void Write()
    {
        var columns = scene.Plan.Columns;
        for (var first = 0; first < columns.Length; )
        {
            var end = first + 1;
            var tuplet = columns[first].Written.Tuplet;
            while (
                end < columns.Length
                && columns[end].Bar == columns[first].Bar
                && columns[end].Written.Tuplet == tuplet
            )
            {
                end++;
            }

            if (tuplet is not null)
            {
                Write(columns[first..end], tuplet);
            }

            first = end;
        }
    }

    private void Write(ImmutableArray<Column> columns, ScoreSpan tuplet)
    {
        var (first, last) = (columns[0], columns[^1]);
        var beamed = columns.Length > 1 && first.Run.Length == columns.Length && first.Run[0] == first;
        var below = scene.Staff is null || PointsDown(columns);
        var digits = Digits(tuplet);
        var width = digits.Sum(digit => Block.BoxOf(digit, Scale).Width) + (0.1 * (digits.Length - 1));
        if (beamed)
        {
            var middle = (MarkX(first) + MarkX(last)) / 2;
            var y = NumberY(middle - (width / 2), middle + (width / 2), below, NumberClear);
            WriteNumber(first, digits, middle - (width / 2), y);
            return;
        }

        var bracket = BracketOver(columns, below);
        var centre = (bracket.FromX + bracket.ToX) / 2;
        WriteBracket(first, bracket, width, below);
        WriteNumber(first, digits, centre - (width / 2), bracket.At(centre));
    }

    // It slopes as a beam over the same notes would, and lies as near as the ink under it allows.
    private BeamLine BracketOver(ImmutableArray<Column> columns, bool below)
    {
        // A rest at the end is covered with its dots.
        var reach = columns[^1].IsRest ? scene.Piece.Ink.Of(columns[^1], Lane.Staff)?.Right : null;
        var (left, right) = (columns[0].X - Pens.HalfHead, columns[^1].X + (reach ?? Pens.HalfHead));
        var notes = columns.Where(column => !column.IsRest).ToList();
        var stems = notes.Select(column => new BeamedStem(column.X, StemWriter.Nearest(column, !below), 0));
        var rise = scene.Staff is null || notes.Count < 2 ? 0 : BeamSlant.Rise([.. stems], !below);
        var slope = new BeamLine(left, 0, right, -rise);
        var steps = (int)Math.Ceiling((right - left) * 2);
        var at = below ? double.NegativeInfinity : double.PositiveInfinity;
        for (var i = 0; i < steps; i++)
        {
            var (from, to) = (left + ((right - left) * i / steps), left + ((right - left) * (i + 1) / steps));
            at = below
                ? Math.Max(
                    at,
                    scene.Top.FreeBelow(from, to, Clear + Hook) - Math.Min(slope.At(from), slope.At(to))
                )
                : Math.Min(
                    at,
                    scene.Top.FreeAbove(from, to, Clear + Hook) - Math.Max(slope.At(from), slope.At(to))
                );
        }

        return new BeamLine(left, at, right, at - rise);
    }

    // As most of its stems; at a draw up.
    private static bool PointsDown(ImmutableArray<Column> columns) =>
        columns.Count(column => column is { IsRest: false, Up: false })
        > columns.Count(column => column is { IsRest: false, Up: true });

    private double MarkX(Column column) => scene.Staff is null ? column.X : StemWriter.StemX(column);

    // The middle of the number's height.
    private double NumberY(double left, double right, bool below, double clear)
    {
        var half = Block.BoxOf(Glyphs.Tuplet3, Scale).Height / 2;
        return below
            ? scene.Top.FreeBelow(left, right, clear) + half
            : scene.Top.FreeAbove(left, right, clear) - half;
    }

    private void WriteNumber(Column first, int[] digits, double x, double middle)
    {
        for (var i = 0; i < digits.Length; i++)
        {
            var box = Block.BoxOf(digits[i], Scale);
            var y = middle - box.Top - (box.Height / 2);
            scene.Top.Glyph(Scene.Tag(first, "tuplet", i + 1), digits[i], x - box.Left, y, Scale);
            // Later signs stand over it, not close beside it.
            scene.Top.Reserve(new Box(x - Beside, y + box.Top, x + box.Width + Beside, y + box.Bottom));
            x += box.Width + 0.1;
        }
    }

    private void WriteBracket(Column first, BeamLine bracket, double numberWidth, bool below)
    {
        var hook = below ? -Hook : Hook;
        var (left, right) = (new Point(bracket.FromX, bracket.FromY), new Point(bracket.ToX, bracket.ToY));
        var centre = (left.X + right.X) / 2;
        var gap = (numberWidth / 2) + 0.4;
        var (before, after) = (centre - gap, centre + gap);
        ReadOnlySpan<(Point From, Point To)> lines =
        [
            (left.Moved(0, hook), left),
            (left, new Point(before, bracket.At(before))),
            (new Point(after, bracket.At(after)), right),
            (right, right.Moved(0, hook)),
        ];
        for (var i = 0; i < lines.Length; i++)
        {
            var (from, to) = lines[i];
            if (from.X <= to.X)
            {
                scene.Top.Line(Scene.Tag(first, "tuplet-bracket", i + 1), from, to, Pens.Bracket);
            }
        }
    }

    // The ratio only where the normal number is not the power of two below.
    private static int[] Digits(ScoreSpan tuplet)
    {
        var obvious =
            tuplet.Normal < tuplet.Actual
            && tuplet.Actual < 2 * tuplet.Normal
            && (tuplet.Normal & (tuplet.Normal - 1)) == 0;
        var text = tuplet.Actual.ToString(CultureInfo.InvariantCulture);
        text += obvious ? "" : ":" + tuplet.Normal.ToString(CultureInfo.InvariantCulture);
        return [.. text.Select(letter => letter == ':' ? Glyphs.TupletColon : Glyphs.Tuplet0 + letter - '0')];
    }
}
