using CsCheck;
using Passagework.Sound.Mixing;

namespace Passagework.Tests.Sound.Mixing;

/// <summary>Check values of ITU-R BS.1770-4 and of EBU Tech 3341 (minimum requirements 1 to 5).</summary>
public sealed class LoudnessMeterTests
{
    [Theory]
    [InlineData(44_100)]
    [InlineData(48_000)]
    public void A_full_sine_of_997_Hz_in_one_channel_is_3_01_below(int sampleRate) =>
        Assert.Equal(-3.01, Measured(sampleRate, 1, (0, 997, 5.0)), 0.005);

    [Theory]
    [InlineData(-23.0, "-23:20")]
    [InlineData(-33.0, "-33:20")]
    [InlineData(-23.0, "-36:10 -23:60 -36:10")]
    [InlineData(-23.0, "-72:10 -36:10 -23:60 -36:10 -72:10")]
    [InlineData(-23.0, "-26:20 -20:20.1 -26:20")]
    public void Tones_in_two_channels_measure_as_published(double expected, string tones)
    {
        var parts = tones
            .Split(' ')
            .Select(part => part.Split(':'))
            .Select(part => (Number(part[0]), 1000.0, Number(part[1])));

        Assert.Equal(expected, Measured(48_000, 2, [.. parts]), 0.1);
    }

    [Fact]
    public void The_filters_at_48_kHz_are_the_ones_listed()
    {
        // ITU-R BS.1770-4, tables 1 and 2.
        AssertNear(
            (1.53512485958697, -2.69169618940638, 1.19839281085285, -1.69065929318241, 0.73248077421585),
            KWeighting.Shelf(48_000)
        );
        AssertNear((1, -2, 1, -1.99004745483398, 0.99007225036621), KWeighting.HighPass(48_000));
    }

    [Fact]
    public void Silence_and_less_than_a_block_have_no_loudness()
    {
        var meter = new LoudnessMeter(48_000, 1);
        meter.Add(new float[48_000]);
        var brief = new LoudnessMeter(48_000, 1);
        brief.Add(Tone(48_000, 1, 0, 997, 0.39));

        Assert.Null(meter.Integrated);
        Assert.Null(brief.Integrated);
    }

    [Fact]
    public void It_does_not_matter_in_which_pieces_sound_arrives() =>
        Gen.Select(Gen.Int[1, 5000], Gen.Int[1, 2])
            .Sample(
                (piece, channels) =>
                {
                    var sound = Tone(44_100, channels, -12, 440, 1);
                    var (whole, pieces) = (
                        new LoudnessMeter(44_100, channels),
                        new LoudnessMeter(44_100, channels)
                    );
                    whole.Add(sound);
                    for (var at = 0; at < sound.Length; at += piece * channels)
                    {
                        pieces.Add(sound.AsSpan(at, Math.Min(piece * channels, sound.Length - at)));
                    }

                    Assert.Equal(whole.Integrated, pieces.Integrated);
                },
                iter: 20
            );

    private static void AssertNear((double, double, double, double, double) listed, FilterSection found)
    {
        Assert.Equal(listed.Item1, found.B0, 1e-8);
        Assert.Equal(listed.Item2, found.B1, 1e-8);
        Assert.Equal(listed.Item3, found.B2, 1e-8);
        Assert.Equal(listed.Item4, found.A1, 1e-8);
        Assert.Equal(listed.Item5, found.A2, 1e-8);
    }

    private static double Measured(
        int sampleRate,
        int channels,
        params (double Decibels, double Hertz, double Seconds)[] parts
    )
    {
        var meter = new LoudnessMeter(sampleRate, channels);
        foreach (var (decibels, hertz, seconds) in parts)
        {
            meter.Add(Tone(sampleRate, channels, decibels, hertz, seconds));
        }

        return meter.Integrated ?? double.NaN;
    }

    private static float[] Tone(int sampleRate, int channels, double decibels, double hertz, double seconds)
    {
        var sound = new float[(int)(seconds * sampleRate) * channels];
        var peak = Math.Pow(10, decibels / 20);
        for (var i = 0; i < sound.Length; i++)
        {
            sound[i] = (float)(peak * Math.Sin(Math.Tau * hertz * (i / channels) / sampleRate));
        }

        return sound;
    }

    private static double Number(string text) =>
        double.Parse(text, System.Globalization.CultureInfo.InvariantCulture);
}
