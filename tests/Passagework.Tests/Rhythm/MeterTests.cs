using Passagework.Rhythm;

namespace Passagework.Tests.Rhythm;

public sealed class MeterTests
{
    [Theory]
    [InlineData("2/4", 2, "1/4", "1/2")]
    [InlineData("3/4", 3, "1/4", "3/4")]
    [InlineData("4/4", 4, "1/4", "1")]
    [InlineData("5/4", 5, "1/4", "5/4")]
    [InlineData("2/2", 2, "1/2", "1")]
    [InlineData("3/8", 3, "1/8", "3/8")]
    [InlineData("5/8", 5, "1/8", "5/8")]
    [InlineData("6/8", 2, "3/8", "3/4")]
    [InlineData("7/8", 7, "1/8", "7/8")]
    [InlineData("9/8", 3, "3/8", "9/8")]
    [InlineData("12/8", 4, "3/8", "3/2")]
    public void Beat_is_the_one_that_is_felt(string text, int beats, string beat, string bar)
    {
        var meter = Beats.Meter(text);

        Assert.Equal(beats, meter.BeatsPerBar);
        Assert.Equal(beat, meter.Beat.ToString());
        Assert.Equal(bar, meter.Bar.ToString());
        Assert.Equal(text, meter.ToString());
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("4")]
    [InlineData("0/4")]
    [InlineData("17/8")]
    [InlineData("4/3")]
    [InlineData("4/4/4")]
    [InlineData("-4/4")]
    [InlineData(" 4/4")]
    public void TryParse_refuses_what_is_no_metre(string? text) => Assert.False(Meter.TryParse(text, out _));

    [Fact]
    public void Default_is_four_four() => Assert.Equal("4/4", default(Meter).ToString());
}
