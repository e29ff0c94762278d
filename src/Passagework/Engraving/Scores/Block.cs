using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Engraving.Scores;

/// <summary>What a mark is and belongs to.</summary>
/// <param name="Id">Its stable name.</param>
/// <param name="Kind">What it stands for.</param>
/// <param name="Note">Index of its note.</param>
/// <param name="Ink">What it is drawn in.</param>
internal readonly record struct Tag(string Id, string Kind, int? Note = null, Ink Ink = Ink.Main);

/// <summary>
/// One staff of a system with all that stands above and below it. Drawn in staff spaces, y downwards from the top line;
/// every mark raises the outlines, so that later marks keep clear of it.
/// </summary>
internal sealed class Block
{
    private readonly List<Mark> _marks = [];
    private readonly double _space;

    public Block(double width, double height, double spaceMm)
    {
        Height = height;
        _space = spaceMm;
        Above = new Skyline(width);
        Below = new Skyline(width);
    }

    /// <summary>From the first to the last line.</summary>
    public double Height { get; }

    /// <summary>Ink above: reach is the height over the top line.</summary>
    public Skyline Above { get; }

    /// <summary>Ink below: reach is the depth under the top line.</summary>
    public Skyline Below { get; }

    /// <summary>The marks so far, in millimetres from the top line.</summary>
    public IReadOnlyList<Mark> Marks => _marks;

    /// <summary>A sign with its origin at a place.</summary>
    public void Glyph(Tag tag, int codePoint, double x, double y, double scale = 1)
    {
        _marks.Add(
            new GlyphMark(codePoint, At(x, y), _space * scale)
            {
                Id = tag.Id,
                Kind = tag.Kind,
                Note = tag.Note,
                Ink = tag.Ink,
            }
        );
        Reserve(BoxOf(codePoint, scale).Moved(x, y));
    }

    /// <summary>A line; it raises the outlines strip by strip where it slants.</summary>
    public void Line(Tag tag, Point from, Point to, double width, ImmutableArray<double> dash = default)
    {
        var dashes = dash.IsDefault ? [] : dash.Select(length => length * _space).ToImmutableArray();
        _marks.Add(
            new LineMark(At(from.X, from.Y), At(to.X, to.Y), width * _space)
            {
                Id = tag.Id,
                Kind = tag.Kind,
                Note = tag.Note,
                Ink = tag.Ink,
                DashMm = dashes,
            }
        );
        ReserveLine(from, to, width / 2);
    }

    /// <summary>A beam: a slanting bar with upright ends, of a thickness measured upright.</summary>
    public void Bar(Tag tag, Point from, Point to, double thickness)
    {
        var half = thickness / 2;
        _marks.Add(
            new PolygonMark([
                At(from.X, from.Y - half),
                At(to.X, to.Y - half),
                At(to.X, to.Y + half),
                At(from.X, from.Y + half),
            ])
            {
                Id = tag.Id,
                Kind = tag.Kind,
                Note = tag.Note,
                Ink = tag.Ink,
            }
        );
        ReserveLine(from, to, half);
    }

    /// <summary>A filled figure.</summary>
    public void Figure(Tag tag, params ReadOnlySpan<Point> corners)
    {
        var placed = ImmutableArray.CreateBuilder<Point>(corners.Length);
        foreach (var corner in corners)
        {
            placed.Add(At(corner.X, corner.Y));
            Reserve(new Box(corner.X, corner.Y, corner.X, corner.Y));
        }

        _marks.Add(
            new PolygonMark(placed.MoveToImmutable())
            {
                Id = tag.Id,
                Kind = tag.Kind,
                Note = tag.Note,
                Ink = tag.Ink,
            }
        );
    }

    /// <summary>Text with its baseline at a place; the size is its em in spaces.</summary>
    public void Text(Tag tag, Lettering text, double x, double y, Anchor anchor = Anchor.Start)
    {
        var mark = new TextMark(text.Text, At(x, y), text.Face, text.Em * _space)
        {
            Id = tag.Id,
            Kind = tag.Kind,
            Note = tag.Note,
            Ink = tag.Ink,
            Anchor = anchor,
        };
        _marks.Add(mark);
        Reserve(text.Ink(anchor).Moved(x, y));
    }

    /// <summary>A slur or tie.</summary>
    public void Curve(Tag tag, Arc arc)
    {
        var (lean, back) = (arc.At(1.0 / 4, lean: true), arc.At(3.0 / 4, lean: true));
        _marks.Add(
            new CurveMark(
                At(arc.From.X, arc.From.Y),
                At(lean.X, lean.Y),
                At(back.X, back.Y),
                At(arc.To.X, arc.To.Y),
                Pens.SlurEnd * _space,
                Pens.SlurMiddle * _space
            )
            {
                Id = tag.Id,
                Kind = tag.Kind,
                Note = tag.Note,
                Ink = tag.Ink,
            }
        );
        const int Samples = 12;
        for (var i = 0; i < Samples; i++)
        {
            var (a, b) = (arc.At(i / (double)Samples), arc.At((i + 1) / (double)Samples));
            ReserveLine(a, b, Pens.SlurMiddle / 2);
        }
    }

    /// <summary>A curve of one thickness with round ends, by its ends and control points.</summary>
    public void Stroke(Tag tag, (Point From, Point Lean, Point Back, Point To) curve, double width)
    {
        var (pen, a, b) = (width * _space, curve.From, curve.To);
        var mark = new CurveMark(
            At(a.X, a.Y),
            At(curve.Lean.X, curve.Lean.Y),
            At(curve.Back.X, curve.Back.Y),
            At(b.X, b.Y),
            pen,
            pen
        )
        {
            Id = tag.Id,
            Kind = tag.Kind,
            Note = tag.Note,
            Ink = tag.Ink,
        };
        _marks.Add(mark);
        var ink = CurveShape.Of(mark).Ink;
        Reserve(new Box(ink.Left / _space, ink.Top / _space, ink.Right / _space, ink.Bottom / _space));
    }

    /// <summary>Ends the drawing: the outlines give their memory back.</summary>
    public void Release()
    {
        Above.Release();
        Below.Release();
    }

    /// <summary>Keeps later marks away from a box.</summary>
    public void Reserve(Box box)
    {
        Above.Raise(box.Left, box.Right, -box.Top);
        Below.Raise(box.Left, box.Right, box.Bottom);
    }

    /// <summary>The highest y at which something may end so that it stays a distance above all ink and the top line.</summary>
    public double FreeAbove(double from, double to, double gap) => -Math.Max(0, Above.Over(from, to)) - gap;

    /// <summary>The lowest y at which something may begin so that it stays a distance below all ink and the last line.</summary>
    public double FreeBelow(double from, double to, double gap) =>
        Math.Max(Height, Below.Over(from, to)) + gap;

    /// <summary>Ink of a sign around its origin, y downwards.</summary>
    public static Box BoxOf(int codePoint, double scale)
    {
        var shape = MusicFont.Glyph(codePoint);
        return new Box(shape.Left * scale, -shape.Top * scale, shape.Right * scale, -shape.Bottom * scale);
    }

    private void ReserveLine(Point from, Point to, double half)
    {
        var steps = from.Y == to.Y || from.X == to.X ? 1 : (int)Math.Ceiling(Math.Abs(to.X - from.X) * 2) + 1;
        for (var i = 0; i < steps; i++)
        {
            var (a, b) = (Between(from, to, i / (double)steps), Between(from, to, (i + 1) / (double)steps));
            Reserve(
                new Box(
                    Math.Min(a.X, b.X),
                    Math.Min(a.Y, b.Y) - half,
                    Math.Max(a.X, b.X),
                    Math.Max(a.Y, b.Y) + half
                )
            );
        }
    }

    private static Point Between(Point from, Point to, double share) =>
        new(from.X + ((to.X - from.X) * share), from.Y + ((to.Y - from.Y) * share));

    private Point At(double x, double y) => new(x * _space, y * _space);
}

/// <summary>A text in a face at a size; its em is given in staff spaces.</summary>
/// <param name="Text">One line.</param>
/// <param name="Face">The face.</param>
/// <param name="Em">Height of the em in spaces.</param>
internal readonly record struct Lettering(string Text, Face Face, double Em)
{
    /// <summary>From the start to where the next letter would stand.</summary>
    public double Width => TextFont.Width(Text, Face, Em);

    /// <summary>Ink around the point at which the text is set.</summary>
    public Box Ink(Anchor anchor = Anchor.Start)
    {
        var ink = TextFont.InkBox(Text, Face, Em);
        return anchor switch
        {
            Anchor.Middle => ink.Moved(-Width / 2, 0),
            Anchor.End => ink.Moved(-Width, 0),
            _ => ink,
        };
    }
}

/// <summary>A slur or tie as its ends and how far its middle line bulges; above where the bulge is negative.</summary>
/// <param name="From">Its left end.</param>
/// <param name="To">Its right end.</param>
/// <param name="Bulge">How far the control points lie off the straight line.</param>
internal readonly record struct Arc(Point From, Point To, double Bulge)
{
    /// <summary>A point of the middle line, or a control point with the full bulge.</summary>
    public Point At(double share, bool lean = false)
    {
        var off = lean ? Bulge : 3 * share * (1 - share) * Bulge;
        return new Point(From.X + ((To.X - From.X) * share), From.Y + ((To.Y - From.Y) * share) + off);
    }
}
