using Passagework.Repertoire;

namespace Passagework.Tests.Repertoire;

public class WilsonTests
{
    // Bounds at 90 %, both sides, of counts in 40; the formula of Wilson 1927 worked by hand.
    [Theory]
    [InlineData(0.3279, 0.5784, 18)]
    [InlineData(0.0796, 0.2648, 6)]
    [InlineData(0, 0.0634, 0)]
    public void Bounds_of_counts_in_forty(double low, double high, int count)
    {
        var interval = Wilson.Of(count, 40);

        Assert.Equal(low, interval.Low, 0.00005);
        Assert.Equal(high, interval.High, 0.00005);
    }

    [Fact]
    public void All_of_them_mirror_none()
    {
        Assert.Equal(1 - Wilson.Of(0, 40).High, Wilson.Of(40, 40).Low, 1e-12);
        Assert.Equal(1, Wilson.Of(40, 40).High, 1e-12);
    }

    [Fact]
    public void No_trials_and_impossible_counts_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => Wilson.Of(0, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Wilson.Of(5, 4));
        Assert.Throws<ArgumentOutOfRangeException>(() => Wilson.Of(-1, 4));
    }
}
