using Passagework.Rhythm;

namespace Passagework.Tests.Rhythm;

public sealed class AccentMapTests
{
    [Fact]
    public void Velocity_follows_the_weights_of_a_bar_in_sixteenths()
    {
        var weights = MetricalTree.Of(default, 4).Weights;

        var velocities = weights.Select(weight => AccentMap.Velocity(AccentMode.Both, weight, false, false));

        Assert.Equal([96, 64, 72, 64, 80, 64, 72, 64, 88, 64, 72, 64, 80, 64, 72, 64], velocities);
    }

    [Theory]
    [InlineData(84, AccentMode.Both, 1, true, false)]
    [InlineData(92, AccentMode.Both, 1, true, true)]
    [InlineData(124, AccentMode.Both, 5, true, true)]
    [InlineData(127, AccentMode.Both, 6, true, true)]
    [InlineData(96, AccentMode.Meter, 5, true, false)]
    [InlineData(104, AccentMode.Meter, 5, true, true)]
    [InlineData(84, AccentMode.Groups, 5, true, false)]
    [InlineData(64, AccentMode.Groups, 5, false, false)]
    [InlineData(64, AccentMode.None, 5, true, true)]
    public void Velocity_counts_what_the_mode_says(
        int velocity,
        AccentMode mode,
        int weight,
        bool start,
        bool accent
    ) => Assert.Equal(velocity, AccentMap.Velocity(mode, weight, start, accent));
}
