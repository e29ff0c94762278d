using Passagework.Sound.Click;
using Passagework.Theory;

namespace Passagework.Tests.Sound.Click;

public sealed class DroneTests
{
    [Theory]
    [InlineData("A", 110.0, 164.8138)]
    [InlineData("G#", 207.6523, 311.1270)]
    [InlineData("C", 130.8128, 195.9977)]
    public void Root_and_fifth_sound_in_their_octave(string root, double low, double high)
    {
        var sound = Rendered(root);

        // Each far above what lies a semitone beside it.
        Assert.True(Strength(sound, low) > 20 * Strength(sound, low * 1.0595));
        Assert.True(Strength(sound, high) > 20 * Strength(sound, high * 1.0595));
    }

    [Fact]
    public void It_comes_and_goes_without_a_step()
    {
        var sound = Rendered("A");

        Assert.Equal(0, sound[0]);
        Assert.True(Math.Abs(sound[^1]) < 1e-4);
        Assert.True(sound.Max() is > 0.3f and < 1);
    }

    [Fact]
    public void A_stretch_is_the_same_as_in_the_whole()
    {
        var whole = Rendered("D");
        var part = new float[1000];
        new Drone(Name("D"), 44_100, 2).Render(part, 40_000);

        Assert.Equal(whole[40_000..41_000], part);
    }

    private static float[] Rendered(string root)
    {
        var drone = new Drone(Name(root), 44_100, 2);
        var sound = new float[drone.SamplesNeeded];
        drone.Render(sound, 0);
        return sound;
    }

    private static NoteName Name(string text) =>
        NoteName.TryParse(text, out var name) ? name : throw new ArgumentException(text, nameof(text));

    // One bin of a Fourier transform under a Hann window.
    private static double Strength(float[] sound, double hertz)
    {
        var (real, imaginary) = (0.0, 0.0);
        for (var i = 0; i < sound.Length; i++)
        {
            var window = 0.5 - (0.5 * Math.Cos(Math.Tau * i / sound.Length));
            var angle = Math.Tau * hertz * i / 44_100;
            real += window * sound[i] * Math.Cos(angle);
            imaginary += window * sound[i] * Math.Sin(angle);
        }

        return Math.Sqrt((real * real) + (imaginary * imaginary));
    }
}
