using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Sheets;

/// <summary>Lines that part the fields of a sheet.</summary>
internal static class Rules
{
    public const double ThinMm = 0.25;

    public static LineMark Across(double left, double right, double y, string id, Ink ink = Ink.Rule) =>
        new(new Point(left, y), new Point(right, y), ThinMm)
        {
            Id = id,
            Kind = "rule",
            Ink = ink,
        };

    public static LineMark Down(double x, double top, double bottom, string id) =>
        new(new Point(x, top), new Point(x, bottom), ThinMm)
        {
            Id = id,
            Kind = "rule",
            Ink = Ink.Rule,
        };
}
