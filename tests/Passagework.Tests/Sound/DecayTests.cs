using Passagework.Sound;
using Passagework.Tests.Sound.Measuring;

namespace Passagework.Tests.Sound;

/// <summary>How long strings ring, by string and fret, against published figures.</summary>
public sealed class DecayTests
{
    /// <summary>
    /// Loop gain of a classical guitar by string (6 to 1) as a straight line over the fret: value at the open string
    /// and step per fret, calibrated from recordings (Välimäki, Huopaniemi, Karjalainen and Jánosy 1996, table 1, as
    /// quoted in the parameters of a later published thesis).
    /// </summary>
    private static readonly (double Open, double Step)[] CalibratedGain =
    [
        (0.97816203, 0.00061375),
        (0.98347977, 0.00040240),
        (0.98780641, 0.00037712),
        (0.99012478, 0.00025250),
        (0.99247814, 0.00012644),
        (0.99402124, 0.00008928),
    ];

    /// <summary>Diameter in metres and mass in kg/m of a light electric set, 6 to 1 (common gauges .042 to .009).</summary>
    private static readonly (double Diameter, double Mass)[] LightSet =
    [
        (1.07e-3, 5.9e-3),
        (0.81e-3, 3.4e-3),
        (0.61e-3, 1.9e-3),
        (0.41e-3, 1.02e-3),
        (0.28e-3, 0.48e-3),
        (0.23e-3, 0.32e-3),
    ];

    [Fact]
    public void Nylon_strings_ring_as_long_as_a_calibrated_classical_guitar_s()
    {
        foreach (var (s, fret) in Places())
        {
            var ratio = Sixty(GuitarSound.Nylon, s, fret) / Calibrated(s, fret);

            Assert.True(
                ratio is > 0.6 and < 1.4,
                $"string {s} fret {fret}: {ratio:F2} of the calibrated time"
            );
        }
    }

    [Theory]
    [InlineData(GuitarSound.SteelString)]
    [InlineData(GuitarSound.CleanElectric)]
    public void Steel_strings_ring_longer_than_nylon_and_shorter_than_air_alone_allows(GuitarSound sound)
    {
        foreach (var (s, fret) in Places().Where(p => p.Fret < 12))
        {
            var sixty = Sixty(sound, s, fret);

            Assert.True(sixty > 0.8 * Calibrated(s, fret), $"string {s} fret {fret}: {sixty:F1} s");
            Assert.True(sixty < AirAlone(s, fret), $"string {s} fret {fret}: {sixty:F1} s");
        }
    }

    [Fact]
    public void A_solid_body_rings_longer_than_a_body_that_radiates()
    {
        // Fleischer 1999: solid bodies sustain longer than acoustic ones, and less with rising fret.
        foreach (var (s, fret) in Places())
        {
            Assert.True(Sixty(GuitarSound.CleanElectric, s, fret) > Sixty(GuitarSound.SteelString, s, fret));
        }
    }

    [Theory]
    [InlineData(GuitarSound.SteelString)]
    [InlineData(GuitarSound.CleanElectric)]
    [InlineData(GuitarSound.Nylon)]
    public void Decay_shortens_with_the_fret_and_with_the_partial(GuitarSound sound)
    {
        for (var s = 1; s <= 6; s++)
        {
            double[] times = [.. new[] { 0, 5, 12, 19 }.Select(fret => Sixty(sound, s, fret))];

            Assert.Equal(times.OrderDescending(), times);
            Assert.True(Sixty(sound, s, 0, partial: 8) < Sixty(sound, s, 0));
        }
    }

    private static IEnumerable<(int String, int Fret)> Places() =>
        from s in Enumerable.Range(1, 6)
        from fret in new[] { 0, 5, 12 }
        select (s, fret);

    private static double Sixty(GuitarSound sound, int s, int fret, int partial = 1)
    {
        var samples = Plucks.Render(sound, 1.4, Plucks.Pluck(s, fret));
        var hertz = partial * Tone.Hertz(Plucks.Open[s - 1] + fret);
        return Tone.Sixty(samples.AsSpan(Plucks.Rate / 5), Plucks.Rate, hertz, 0.2);
    }

    private static double Calibrated(int s, int fret)
    {
        var (open, step) = CalibratedGain[6 - s];
        return -Math.Log(1000) / (Tone.Hertz(Plucks.Open[s - 1] + fret) * Math.Log(open + (step * fret)));
    }

    // Valette 1995: R = 2πη + 2πd√(πηρf), 1/Q = R/(2πμf); T60 = ln(1000)·Q/(πf).
    private static double AirAlone(int s, int fret)
    {
        const double Viscosity = 1.8e-5;
        const double Density = 1.2;
        var (diameter, mass) = LightSet[6 - s];
        var hertz = Tone.Hertz(Plucks.Open[s - 1] + fret);
        var drag =
            (Math.Tau * Viscosity) + (Math.Tau * diameter * Math.Sqrt(Math.PI * Viscosity * Density * hertz));
        return Math.Log(1000) * 2 * mass / drag;
    }
}
