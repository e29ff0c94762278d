using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Instrument;

namespace Passagework.Engraving.Pictures;

/// <summary>Draws the way from note to note, and dashed with an arrow the way to the next group.</summary>
internal sealed class NeckRoute(NeckFrame frame, NeckNotes notes)
{
    private const double LineMm = 0.42;
    private const double ClearMm = 0.15;
    private const double ArrowMm = 2.3;
    private const double LeastArrowMm = 1.1;
    private const double ArrowHalfShare = 0.41;

    // An arrow takes no more than this of the line that shows between two dots.
    private const double ArrowShare = 0.85;
    private static readonly ImmutableArray<double> Dashes = [1.05, 0.8];

    public IEnumerable<Mark> Marks()
    {
        var drawn = new HashSet<(Place, Place)>();
        for (var i = 1; i < notes.Played.Length; i++)
        {
            var (from, to) = (notes.Played[i - 1].Place, notes.Played[i].Place);
            if (from != to && !drawn.Contains((to, from)) && drawn.Add((from, to)))
            {
                yield return Line(frame.At(from), frame.At(to), $"route-{i}", dashed: false);
            }
        }

        if (notes.Next is { } next && notes.Played[^1].Place is var last && next.Place != last)
        {
            foreach (var mark in Join(new NeckDetour(frame, notes).Corners(last, next.Place)))
            {
                yield return mark;
            }
        }
    }

    private IEnumerable<Mark> Join(ImmutableArray<Point> corners)
    {
        var (before, end) = (corners[^2], corners[^1]);
        var hidden = (frame.DotMm / 2) + ClearMm;
        var shown = Distance(before, end) - hidden - (corners.Length == 2 ? frame.DotMm / 2 : 0);
        var arrow = Math.Clamp(shown * ArrowShare, LeastArrowMm, ArrowMm);
        var tip = Towards(end, before, hidden);
        var back = Towards(tip, before, arrow);
        for (var i = 1; i < corners.Length; i++)
        {
            var target = i == corners.Length - 1 ? back : corners[i];
            yield return Line(corners[i - 1], target, $"join-{i}", dashed: true);
        }

        var (x, y) = Unit(before, end);
        var half = arrow * ArrowHalfShare;
        yield return new PolygonMark([tip, back.Moved(-y * half, x * half), back.Moved(y * half, -x * half)])
        {
            Id = "join-head",
            Kind = "route-head",
            Ink = Ink.Fretting,
        };
    }

    private static LineMark Line(Point from, Point to, string id, bool dashed) =>
        new(from, to, LineMm)
        {
            Id = id,
            Kind = dashed ? "route-join" : "route",
            Ink = Ink.Fretting,
            DashMm = dashed ? Dashes : [],
            RoundEnds = !dashed,
        };

    private static double Distance(Point from, Point to) =>
        Math.Sqrt(((to.X - from.X) * (to.X - from.X)) + ((to.Y - from.Y) * (to.Y - from.Y)));

    private static (double X, double Y) Unit(Point from, Point to) =>
        ((to.X - from.X) / Distance(from, to), (to.Y - from.Y) / Distance(from, to));

    private static Point Towards(Point from, Point to, double mm)
    {
        var (x, y) = Unit(from, to);
        return from.Moved(x * mm, y * mm);
    }
}
