using Passagework.Choosing;

namespace Passagework.Tests.Choosing;

public class ClosenessTests
{
    [Theory]
    [InlineData("clearly", 1)]
    [InlineData("clearly", 0.9)]
    [InlineData("fairly clearly", 0.867)]
    [InlineData("fairly clearly", 0.7)]
    [InlineData("by a little", 0.69)]
    [InlineData("by a little", 0.5)]
    [InlineData("it depends on what you want", 0.49)]
    public void A_share_becomes_words(string expected, double share) =>
        Assert.Equal(expected, Closeness.Words(share));
}
