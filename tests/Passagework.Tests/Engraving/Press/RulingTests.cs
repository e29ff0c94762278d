using CsCheck;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;

namespace Passagework.Tests.Engraving.Press;

public sealed class RulingTests
{
    [Fact]
    public void Lines_cover_three_eighths_of_a_large_figure()
    {
        var square = new List<Point> { new(0, 0), new(120, 0), new(120, 120), new(0, 120) };

        var covered = Ruling.Lines(square).Sum(Area) / (120 * 120);

        // 0.45 of every 1.2 mm.
        Assert.Equal(0.375, covered, 0.003);
    }

    [Fact]
    public void Lines_stay_inside_the_figure() =>
        (
            from width in Gen.Double[0.1, 30]
            from height in Gen.Double[0.1, 30]
            from left in Gen.Double[-50, 50]
            from top in Gen.Double[-50, 50]
            select new Box(left, top, left + width, top + height)
        ).Sample(box =>
        {
            var corners = new List<Point>
            {
                new(box.Left, box.Top),
                new(box.Right, box.Top),
                new(box.Right, box.Bottom),
                new(box.Left, box.Bottom),
            };

            Assert.All(
                Ruling.Lines(corners).SelectMany(line => line),
                corner => Assert.True(box.Grown(1e-9).Holds(new Box(corner.X, corner.Y, corner.X, corner.Y)))
            );
        });

    [Fact]
    public void Figures_side_by_side_are_ruled_as_one()
    {
        static List<Point> Column(double left, double right) =>
            [new(left, 0), new(right, 0), new(right, 10), new(left, 10)];

        var whole = Ruling.Lines(Column(0, 8)).Sum(Area);
        var halves = Ruling.Lines(Column(0, 3.7)).Sum(Area) + Ruling.Lines(Column(3.7, 8)).Sum(Area);

        Assert.Equal(whole, halves, 1e-9);
    }

    [Fact]
    public void Circle_has_its_corners_on_its_edge() =>
        Assert.All(
            Ruling.Corners(new Point(3, 4), 5),
            corner => Assert.Equal(5, double.Hypot(corner.X - 3, corner.Y - 4), 1e-9)
        );

    private static double Area(List<Point> corners)
    {
        var twice = corners.Zip(
            [.. corners.Skip(1), corners[0]],
            (from, to) => (from.X * to.Y) - (to.X * from.Y)
        );
        return Math.Abs(twice.Sum()) / 2;
    }
}
