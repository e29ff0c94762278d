using Passagework.Rhythm;

namespace Passagework.Tests.Rhythm;

public sealed class MetricalTreeTests
{
    [Theory]
    [InlineData("2/4", 4, "4 1 2 1 3 1 2 1")]
    [InlineData("4/4", 2, "4 1 2 1 3 1 2 1")]
    [InlineData("3/4", 2, "3 1 2 1 2 1")]
    [InlineData("3/4", 4, "4 1 2 1 3 1 2 1 3 1 2 1")]
    [InlineData("3/4", 3, "3 1 1 2 1 1 2 1 1")]
    [InlineData("9/8", 3, "3 1 1 2 1 1 2 1 1")]
    [InlineData("4/4", 3, "4 1 1 2 1 1 3 1 1 2 1 1")]
    [InlineData("12/8", 3, "4 1 1 2 1 1 3 1 1 2 1 1")]
    [InlineData("4/4", 4, "5 1 2 1 3 1 2 1 4 1 2 1 3 1 2 1")]
    [InlineData("4/4", 5, "4 1 1 1 1 2 1 1 1 1 3 1 1 1 1 2 1 1 1 1")]
    [InlineData("4/4", 6, "5 1 2 1 2 1 3 1 2 1 2 1 4 1 2 1 2 1 3 1 2 1 2 1")]
    [InlineData("6/8", 3, "3 1 1 2 1 1")]
    [InlineData("6/8", 6, "4 1 2 1 2 1 3 1 2 1 2 1")]
    [InlineData("5/8", 1, "2 1 1 1 1")]
    public void Weights_count_the_levels_that_start_on_a_pulse(string meter, int perBeat, string weights) =>
        Assert.Equal(weights, string.Join(' ', MetricalTree.Of(Beats.Meter(meter), perBeat).Weights));

    [Fact]
    public void Weights_of_sextuplets_as_two_threes_differ() =>
        Assert.Equal(
            "5 1 1 2 1 1 3 1 1 2 1 1 4 1 1 2 1 1 3 1 1 2 1 1",
            string.Join(' ', MetricalTree.Of(default, 6, sixAsTriplets: true).Weights)
        );

    [Fact]
    public void Of_the_metre_equals_the_same_divisions_written_out() =>
        Assert.Equal(MetricalTree.Of(2, 2, 3, 2), MetricalTree.Of(default, 6));

    [Fact]
    public void Of_refuses_divisions_that_do_not_divide_or_never_end()
    {
        Assert.Throws<ArgumentException>(() => MetricalTree.Of(2, 1));
        Assert.Throws<ArgumentOutOfRangeException>(() => MetricalTree.Of(default(Meter), 65));
        Assert.Throws<ArgumentOutOfRangeException>(() => MetricalTree.Of(default(Meter), 0));
        Assert.Throws<ArgumentException>(() => MetricalTree.Of(1000, 11));
        Assert.Throws<ArgumentException>(() => MetricalTree.Of(int.MaxValue, int.MaxValue));
    }
}
