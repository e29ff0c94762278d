using Passagework.Choosing.Explaining;

namespace Passagework.Tests.Choosing.Explaining;

public sealed class SharesTests
{
    [Theory]
    [InlineData(0, "none")]
    [InlineData(0.04, "hardly any")]
    [InlineData(0.05, "one in ten")]
    [InlineData(0.5, "five in ten")]
    [InlineData(0.74, "seven in ten")]
    [InlineData(0.94, "nine in ten")]
    [InlineData(0.96, "nearly all")]
    [InlineData(1, "all")]
    public void A_share_is_said_in_tenths(double share, string expected) =>
        Assert.Equal(expected, Shares.InTen(share));

    [Theory]
    [InlineData(89, 87, "89 to 100 against 87")]
    [InlineData(2.714, 2.70, "2.71 to 100 against 2.70")]
    [InlineData(2.7, 2.6, "2.7 to 100 against 2.6")]
    [InlineData(1, 1, "1.00 to 100 against 1.00")]
    public void Two_figures_get_the_decimals_that_tell_them_apart(
        double one,
        double other,
        string expected
    ) => Assert.Equal(expected, Shares.Against(one, other, " to 100"));
}
