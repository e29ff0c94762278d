using Passagework.Rhythm;

namespace Passagework.Tests.Rhythm;

public sealed class BarFillingTests
{
    [Theory]
    [InlineData(8, 3, "3 3 2")]
    [InlineData(8, 5, "5 3")]
    [InlineData(8, 6, "6 2")]
    [InlineData(8, 7, "7 1")]
    [InlineData(12, 3, "3 3 3 3")]
    [InlineData(12, 5, "5 5 2")]
    [InlineData(12, 6, "6 6")]
    [InlineData(12, 7, "7 5")]
    [InlineData(16, 3, "3 3 3 3 3 1")]
    [InlineData(16, 5, "5 5 5 1")]
    [InlineData(16, 6, "6 6 4")]
    [InlineData(16, 7, "7 7 2")]
    [InlineData(20, 3, "3 3 3 3 3 3 2")]
    [InlineData(20, 5, "5 5 5 5")]
    [InlineData(20, 6, "6 6 6 2")]
    [InlineData(20, 7, "7 7 6")]
    [InlineData(24, 3, "3 3 3 3 3 3 3 3")]
    [InlineData(24, 5, "5 5 5 5 4")]
    [InlineData(24, 6, "6 6 6 6")]
    [InlineData(24, 7, "7 7 7 3")]
    public void WholeGroups_cuts_the_last_group_at_the_bar_line(int bar, int group, string filling) =>
        Assert.Equal(filling, string.Join(' ', BarFilling.WholeGroups(bar, group)));

    [Theory]
    [InlineData(16, 3, "3 3 3 3 4")]
    [InlineData(16, 5, "5 5 6")]
    [InlineData(8, 7, "7 1")]
    [InlineData(8, 3, "3 3 2")]
    [InlineData(4, 1, "1 1 1 1")]
    [InlineData(5, 5, "5")]
    public void NoSingleLeft_gives_a_lone_pulse_to_the_last_group(int bar, int group, string filling) =>
        Assert.Equal(filling, string.Join(' ', BarFilling.NoSingleLeft(bar, group)));

    [Fact]
    public void WholeGroups_refuses_an_empty_bar_or_group()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => BarFilling.WholeGroups(0, 3));
        Assert.Throws<ArgumentOutOfRangeException>(() => BarFilling.WholeGroups(8, 0));
    }
}
