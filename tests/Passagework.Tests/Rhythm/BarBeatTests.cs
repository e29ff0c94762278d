using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Tests.Rhythm;

public class BarBeatTests
{
    [Theory]
    [InlineData("bar 1, beat 1", "0", "4/4")]
    [InlineData("bar 2, beat 1", "1", "4/4")]
    [InlineData("bar 3, beat 7/2", "21/8", "4/4")]
    [InlineData("bar 2, beat 2", "9/8", "6/8")]
    [InlineData("bar 1, beat 5/3", "1/4", "6/8")]
    [InlineData("bar 2, beat 3", "5/4", "3/4")]
    public void Spots_are_counted_from_one_in_felt_beats(string expected, string onset, string meter)
    {
        Assert.True(Fraction.TryParse(onset, out var at));
        Assert.True(Meter.TryParse(meter, out var bars));

        Assert.Equal(expected, BarBeat.Of(at, bars).ToString());
    }
}
