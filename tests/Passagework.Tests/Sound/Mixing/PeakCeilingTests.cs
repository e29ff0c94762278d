using Passagework.Sound.Mixing;

namespace Passagework.Tests.Sound.Mixing;

public sealed class PeakCeilingTests
{
    [Fact]
    public void Quiet_samples_pass_and_loud_ones_stay_below_minus_1_dBFS()
    {
        float[] samples = [0, 0.5f, -0.5f, 0.6f, -1, 100, float.MaxValue];
        PeakCeiling.Apply(samples);

        Assert.Equal([0, 0.5f, -0.5f], samples[..3]);
        Assert.InRange(samples[3], 0.58f, 0.6f);
        Assert.InRange(samples[4], -0.891f, -0.8f);
        Assert.All(
            samples,
            sample => Assert.InRange(20 * Math.Log10(Math.Abs(sample)), double.NegativeInfinity, -1 + 1e-6)
        );
    }

    [Fact]
    public void The_curve_rises_without_a_bend()
    {
        var samples = Enumerable.Range(0, 2001).Select(step => step / 1000f).ToArray();
        PeakCeiling.Apply(samples);
        var slopes = samples.Zip(samples.Skip(1), (low, high) => (high - low) * 1000).ToList();

        Assert.All(slopes, slope => Assert.InRange(slope, 0, 1.001f));
        Assert.All(
            slopes.Zip(slopes.Skip(1)),
            pair => Assert.True(Math.Abs(pair.First - pair.Second) < 0.01)
        );
    }
}
