using Passagework.Choosing.Measures;

namespace Passagework.Tests.Choosing.Measures;

/// <remarks>Values worked by hand from the definition in docs/choosing.md: v first 70, cap 200.</remarks>
public sealed class StayingPowerTests
{
    [Theory]
    [InlineData(150, 0.7260, 0.2740)]
    [InlineData(110, 0.4305, 0.5695)]
    [InlineData(195, 0.9759, 0.0241)]
    [InlineData(70, 0, 1)]
    public void What_is_left_of_the_room_is_what_stays(double last, double used, double left)
    {
        Assert.Equal(used, StayingPower.Used(70, last, 200), 0.00005);
        Assert.Equal(left, StayingPower.Of(70, last, 200), 0.00005);
    }

    [Theory]
    [InlineData(0.99, 5, 0)]
    [InlineData(1, 1, 1)]
    [InlineData(2, 20, 0)]
    [InlineData(14, 15, 0)]
    public void Too_slow_for_music_or_beyond_the_cap_leaves_nothing(
        double first,
        double last,
        double expected
    ) => Assert.Equal(expected, StayingPower.Of(first, last), 1e-12);

    [Fact]
    public void The_cap_is_sixteenths_at_two_hundred() => Assert.Equal(13.33, StayingPower.Cap, 0.005);
}
