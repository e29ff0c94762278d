using System.Globalization;
using System.Text;
using CsCheck;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;

namespace Passagework.Tests.Engraving.Press;

public sealed class SvgOutputTests
{
    [Theory]
    [InlineData("0", 0)]
    [InlineData("0", -0.004)]
    [InlineData("12", 12)]
    [InlineData("3.25", 3.25)]
    [InlineData("3.3", 3.3)]
    [InlineData(".5", 0.5)]
    [InlineData("-.05", -0.05)]
    [InlineData("-7", -7.001)]
    [InlineData("100", 99.996)]
    public void Number_is_short(string expected, double value) =>
        Assert.Equal(expected, new StringBuilder().Number(value).ToString());

    [Fact]
    public void Number_is_right_to_half_its_last_place() =>
        (
            from value in Gen.Double[-10_000, 10_000]
            from places in Gen.Int[0, 6]
            select (value, places)
        ).Sample(
            (value, places) =>
            {
                var read = double.Parse(
                    new StringBuilder().Number(value, places).ToString(),
                    CultureInfo.InvariantCulture
                );
                Assert.Equal(value, read, (0.5 * Math.Pow(10, -places)) + 1e-9);
            }
        );

    [Theory]
    [InlineData("1 2", 1, 2)]
    [InlineData("1-2", 1, -2)]
    [InlineData("-.5 .25", -0.5, 0.25)]
    public void Pair_is_parted_by_a_space_or_a_sign(string expected, double x, double y) =>
        Assert.Equal(expected, new StringBuilder().Pair(new Point(x, y)).ToString());
}
