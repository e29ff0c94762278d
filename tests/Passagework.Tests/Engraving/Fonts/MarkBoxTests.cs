using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Tests.Engraving.Fonts;

public sealed class MarkBoxTests
{
    private const double Close = 1e-9;

    [Fact]
    public void Glyph_stands_on_its_origin_with_y_downwards()
    {
        var head = new GlyphMark(Glyphs.NoteheadBlack, new Point(10, 20), 2) { Id = "a", Kind = "head" };

        AssertBox(new Box(10, 19, 12.36, 21), MarkBox.Of(head), 0.001);
    }

    [Fact]
    public void Line_is_as_thick_as_it_says_and_ends_at_its_points()
    {
        AssertBox(new Box(1, 1.75, 5, 2.25), MarkBox.Of(Line(new(1, 2), new(5, 2))));
        AssertBox(new Box(0.75, 2, 1.25, 7), MarkBox.Of(Line(new(1, 7), new(1, 2))));
        AssertBox(new Box(-0.15, -0.2, 4.15, 3.2), MarkBox.Of(Line(new(0, 0), new(4, 3))));
    }

    [Fact]
    public void Line_with_round_ends_reaches_beyond_its_points() =>
        AssertBox(
            new Box(0.75, 1.75, 5.25, 2.25),
            MarkBox.Of(Line(new(1, 2), new(5, 2)) with { RoundEnds = true })
        );

    [Fact]
    public void Curve_is_thick_in_the_middle()
    {
        var tie = new CurveMark(new(0, 10), new(2, 6), new(8, 6), new(10, 10), 0.2, 0.6)
        {
            Id = "t",
            Kind = "tie",
        };

        // Middle line at t = 1/2: y = 10 - 4 * 3/4 = 7; half of the middle thickness above it.
        AssertBox(new Box(-0.1, 6.7, 10.1, 10.1), MarkBox.Of(tie));
    }

    [Theory]
    [InlineData(Anchor.Start, 0.0)]
    [InlineData(Anchor.Middle, 0.5)]
    [InlineData(Anchor.End, 1.0)]
    public void Text_stands_at_its_anchor(Anchor anchor, double share)
    {
        var mark = new TextMark("12", new Point(30, 40), Face.SansBold, 5)
        {
            Id = "n",
            Kind = "tab-number",
            Anchor = anchor,
        };
        var width = TextFont.Width("12", Face.SansBold, 5);
        var ink = TextFont.InkBox("12", Face.SansBold, 5);

        AssertBox(ink.Moved(30 - (share * width), 40), MarkBox.Of(mark));
    }

    [Fact]
    public void Figures_include_their_outline()
    {
        var beam = new PolygonMark([new(0, 0), new(4, 1), new(4, 2), new(0, 1)])
        {
            Id = "b",
            Kind = "beam",
            OutlineMm = 0.4,
        };
        var dot = new CircleMark(new Point(5, 5), 2)
        {
            Id = "c",
            Kind = "dot",
            OutlineMm = 0.5,
        };

        AssertBox(new Box(-0.2, -0.2, 4.2, 2.2), MarkBox.Of(beam));
        AssertBox(new Box(2.75, 2.75, 7.25, 7.25), MarkBox.Of(dot));
    }

    private static LineMark Line(Point from, Point to) => new(from, to, 0.5) { Id = "l", Kind = "line" };

    private static void AssertBox(Box expected, Box actual, double within = Close)
    {
        Assert.Equal(expected.Left, actual.Left, within);
        Assert.Equal(expected.Top, actual.Top, within);
        Assert.Equal(expected.Right, actual.Right, within);
        Assert.Equal(expected.Bottom, actual.Bottom, within);
    }
}
