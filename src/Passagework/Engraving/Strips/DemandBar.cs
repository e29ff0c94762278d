using System.Globalization;
using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Strips;

/// <summary>One demand as a bar: solid or ruled up to the limit, hollow under a heavy cap beyond it.</summary>
internal sealed class DemandBar(Side side, int note, double x, double width, double space)
{
    private const double Outline = 0.1;
    private const double Cap = 0.3;
    private const double Ring = 0.26;

    /// <summary>The marks of the bar.</summary>
    /// <param name="middle">Height of the middle line.</param>
    /// <param name="length">Length of the whole bar.</param>
    /// <param name="limit">Distance of the limit; null where there is none.</param>
    /// <param name="known">Whether most of the figure rests on published values; else a ring stands at its end.</param>
    public IEnumerable<Mark> Draw(double middle, double length, double? limit, bool known)
    {
        var within = Math.Min(length, limit ?? length);
        var filling = side.Ink == Ink.Fretting ? Filling.Solid : Filling.Ruled;
        yield return Box("demand", middle, 0, within, filling);
        if (within < length)
        {
            yield return Box("excess", middle, within, length, Filling.None);
            var y = middle + (side.Direction * length);
            var half = (width / 2) + (0.25 * space);
            yield return new LineMark(new Point(x - half, y), new Point(x + half, y), Cap * space)
            {
                Id = Id("cap"),
                Kind = $"{side.Name}-cap",
                Note = note,
                Ink = side.Ink,
            };
        }

        if (!known)
        {
            yield return new CircleMark(
                new Point(x, middle + (side.Direction * (length + (2.2 * Ring * space)))),
                Ring * space
            )
            {
                Id = Id("assumed"),
                Kind = "assumed",
                Note = note,
                Ink = Ink.Main,
                Filling = Filling.Paper,
                OutlineMm = Outline * space,
            };
        }
    }

    private PolygonMark Box(string name, double middle, double from, double to, Filling filling)
    {
        var (left, right) = (x - (width / 2), x + (width / 2));
        var (near, far) = (middle + (side.Direction * from), middle + (side.Direction * to));
        return new PolygonMark([
            new Point(left, near),
            new Point(right, near),
            new Point(right, far),
            new Point(left, far),
        ])
        {
            Id = Id(name),
            Kind = $"{side.Name}-{name}",
            Note = note,
            Ink = side.Ink,
            Filling = filling,
            OutlineMm = filling == Filling.Solid ? 0 : Outline * space,
        };
    }

    private string Id(string name) =>
        string.Create(CultureInfo.InvariantCulture, $"note-{note}-{side.Name}-{name}");
}
