namespace Passagework.Engraving.Drawing;

/// <summary>
/// The figure of a slur or tie: the space between two arcs that share their ends, with an outline as thick as the ends
/// and with round joins.
/// </summary>
/// <param name="Curve">The mark.</param>
/// <param name="Outer">Control points of the arc on the one side of the middle line.</param>
/// <param name="Inner">Control points of the arc on the other side.</param>
internal sealed record CurveShape(
    CurveMark Curve,
    (Point Lean, Point Back) Outer,
    (Point Lean, Point Back) Inner
)
{
    /// <summary>The figure of a mark.</summary>
    public static CurveShape Of(CurveMark curve)
    {
        // A cubic whose two control points move by d moves by 3/4 d in its middle.
        var aside = (curve.MiddleMm - curve.EndMm) / 2 / 0.75;
        var (along, down) = (curve.To.X - curve.From.X, curve.To.Y - curve.From.Y);
        var length = double.Hypot(along, down);
        var (right, below) = length > 0 ? (-down / length * aside, along / length * aside) : (0, aside);
        return new CurveShape(
            curve,
            (curve.Lean.Moved(right, below), curve.LeanBack.Moved(right, below)),
            (curve.Lean.Moved(-right, -below), curve.LeanBack.Moved(-right, -below))
        );
    }

    /// <summary>The tight box of its ink.</summary>
    public Box Ink => Arc(Outer).With(Arc(Inner)).Grown(Curve.EndMm / 2);

    private Box Arc((Point Lean, Point Back) arc)
    {
        var (left, right) = Reach(Curve.From.X, arc.Lean.X, arc.Back.X, Curve.To.X);
        var (top, bottom) = Reach(Curve.From.Y, arc.Lean.Y, arc.Back.Y, Curve.To.Y);
        return new Box(left, top, right, bottom);
    }

    // Least and greatest value of a cubic: at the ends or where its derivative, a quadratic, is 0.
    private static (double Least, double Greatest) Reach(double from, double lean, double back, double to)
    {
        var (least, greatest) = (Math.Min(from, to), Math.Max(from, to));
        var a = to - (3 * back) + (3 * lean) - from;
        var b = 2 * (back - (2 * lean) + from);
        var c = lean - from;
        foreach (var t in Roots(a, b, c))
        {
            if (t is <= 0 or >= 1)
                continue;

            var rest = 1 - t;
            var value =
                (rest * rest * rest * from)
                + (3 * rest * rest * t * lean)
                + (3 * rest * t * t * back)
                + (t * t * t * to);
            (least, greatest) = (Math.Min(least, value), Math.Max(greatest, value));
        }

        return (least, greatest);
    }

    private static double[] Roots(double a, double b, double c)
    {
        const double flat = 1e-12;
        if (Math.Abs(a) < flat)
        {
            return Math.Abs(b) < flat ? [] : [-c / b];
        }

        var under = (b * b) - (4 * a * c);
        return under < 0 ? [] : [(-b - Math.Sqrt(under)) / (2 * a), (-b + Math.Sqrt(under)) / (2 * a)];
    }
}
