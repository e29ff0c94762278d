using System.Collections.Immutable;
using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Strips;

/// <summary>
/// Draws the signs of moves: strings seen end-on, string 1 above; round is the fretting hand, pointed the picking hand;
/// filled is used, hollow is passed over, joined is one finger or one stroke that goes on.
/// </summary>
/// <param name="id">Beginning of the marks' names.</param>
/// <param name="ink">The hand's ink; it decides the shape too.</param>
/// <param name="note">The note that the move leads to.</param>
/// <param name="space">One staff space in millimetres.</param>
internal sealed class SignDrawing(string id, Ink ink, int? note, double space)
{
    private const double Radius = 0.27;
    private const double Apart = 0.74;
    private const double Pen = 0.11;
    private readonly List<Mark> _marks = [];

    /// <summary>Height of the tallest sign in spaces.</summary>
    public const double MostHeight = 2.7;

    /// <summary>Half the width of the widest sign in spaces.</summary>
    public const double MostHalfWidth = 0.9;

    /// <summary>The sign around a middle.</summary>
    public ImmutableArray<Mark> Draw(MoveSign sign, Point middle)
    {
        switch (sign.Kind)
        {
            case MoveKind.Skip:
                Skip(middle, sign.Strings);
                break;
            case MoveKind.Roll:
                Joined(middle, new Point(0, Apart / 2), 2.4 * Pen);
                break;
            case MoveKind.SameFinger:
                Joined(middle, new Point(0.45, -0.45), Pen);
                break;
            case MoveKind.Sweep:
                Joined(middle, new Point(0.55, -0.55), Pen);
                Dot(middle, filled: true);
                break;
            default:
                Shift(middle, sign.Kind == MoveKind.ShiftUp ? 1 : -1);
                break;
        }

        return [.. _marks];
    }

    // More strings than fit are drawn closer.
    private void Skip(Point middle, int strings)
    {
        var gap = Math.Min(Apart, (MostHeight - (2 * Radius)) / (strings + 1));
        for (var i = 0; i <= strings + 1; i++)
        {
            var at = middle.Moved(0, (i - ((strings + 1) / 2.0)) * gap * space);
            Dot(at, filled: i == 0 || i == strings + 1);
        }
    }

    private void Joined(Point middle, Point half, double pen)
    {
        var (one, other) = (
            middle.Moved(half.X * space, half.Y * space),
            middle.Moved(-half.X * space, -half.Y * space)
        );
        Line(one, other, pen);
        Dot(one, filled: true);
        Dot(other, filled: true);
    }

    // The stroke stands where the hand was, the mark where it goes.
    private void Shift(Point middle, int direction)
    {
        var (from, to) = (
            middle.Moved(-0.6 * direction * space, 0),
            middle.Moved(0.5 * direction * space, 0)
        );
        Line(from.Moved(0, -0.5 * space), from.Moved(0, 0.5 * space), Pen);
        Line(from, to, Pen);
        Dot(to, filled: true);
    }

    private void Line(Point from, Point to, double pen) =>
        _marks.Add(
            new LineMark(from, to, pen * space)
            {
                Id = NextId(),
                Kind = "move-sign",
                Note = note,
                Ink = ink,
            }
        );

    private void Dot(Point at, bool filled)
    {
        var radius = Radius * space;
        var filling = filled ? Filling.Solid : Filling.Paper;
        var outline = filled ? 0 : Pen * space;
        _marks.Add(
            ink == Ink.Picking
                ? new PolygonMark([
                    at.Moved(0, -1.25 * radius),
                    at.Moved(1.25 * radius, 0),
                    at.Moved(0, 1.25 * radius),
                    at.Moved(-1.25 * radius, 0),
                ])
                {
                    Id = NextId(),
                    Kind = "move-sign",
                    Note = note,
                    Ink = ink,
                    Filling = filling,
                    OutlineMm = outline,
                }
                : new CircleMark(at, radius)
                {
                    Id = NextId(),
                    Kind = "move-sign",
                    Note = note,
                    Ink = ink,
                    Filling = filling,
                    OutlineMm = outline,
                }
        );
    }

    private string NextId() => System.FormattableString.Invariant($"{id}-{_marks.Count}");
}
