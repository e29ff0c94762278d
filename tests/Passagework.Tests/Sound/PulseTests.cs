using Passagework.Sound.Strings;

namespace Passagework.Tests.Sound;

/// <summary>What a stroke sends into its string.</summary>
public sealed class PulseTests
{
    private static readonly Pulse Plain = new()
    {
        Start = 10,
        Period = 200.4,
        Share = 0.2,
        Width = 9,
        Height = 1,
    };

    [Fact]
    public void A_pulse_has_no_mean_wherever_it_starts()
    {
        foreach (var start in new[] { 10, 10.25, 10.5, 10.9 })
        {
            Assert.Equal(0, Drive(Plain with { Start = start }).Sum(), 0.005);
        }
    }

    [Fact]
    public void A_pulse_stands_high_for_its_share_and_low_for_the_rest()
    {
        var drive = Drive(Plain);

        Assert.Equal(0f, drive[10]);
        Assert.Equal(0.8f, drive[30], 1e-5f);
        Assert.Equal(-0.2f, drive[150], 1e-5f);
        Assert.Equal(0f, drive[220], 1e-5f);
    }

    [Fact]
    public void A_pulse_in_pieces_equals_the_whole()
    {
        var noisy = Plain with { NoiseHeight = 0.3, NoiseLength = 40, Seed = 9 };
        var whole = Drive(noisy);
        var pieces = new float[400];
        for (var at = 0; at < 400; at += 50)
        {
            noisy.AddTo(pieces.AsSpan(at, 50), new float[50], at);
        }

        Assert.Equal(whole, pieces);
        Assert.NotEqual(Drive(Plain), whole);
    }

    private static float[] Drive(Pulse pulse)
    {
        var drive = new float[400];
        pulse.AddTo(drive, new float[400], 0);
        return drive;
    }
}
