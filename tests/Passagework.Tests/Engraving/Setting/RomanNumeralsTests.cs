using Passagework.Engraving.Setting;

namespace Passagework.Tests.Engraving.Setting;

/// <summary>Numbers of positions as they are written over the music and under the neck.</summary>
public sealed class RomanNumeralsTests
{
    [Theory]
    [InlineData("I", 1)]
    [InlineData("IV", 4)]
    [InlineData("XIV", 14)]
    [InlineData("XIX", 19)]
    [InlineData("XXIV", 24)]
    public void Positions_are_roman(string expected, int fret) =>
        Assert.Equal(expected, RomanNumerals.Of(fret));
}
