namespace Passagework.Sound.Mixing;

/// <summary>One section of a recursive filter, coefficients with a0 = 1.</summary>
internal readonly record struct FilterSection(double B0, double B1, double B2, double A1, double A2);

/// <summary>The frequency weighting of ITU-R BS.1770-4, annex 1: a shelf for the head, then a high-pass.</summary>
/// <remarks>
/// The standard lists coefficients for 48 kHz only. For other rates the same analogue filters are turned into digital ones
/// by the bilinear transform, with the frequencies, gain and Q that reproduce the listed coefficients at 48 kHz
/// (B. De Man, "Evaluation of implementations of the EBU R128 loudness measurement", AES 145th Convention, 2018).
/// </remarks>
internal static class KWeighting
{
    public static FilterSection Shelf(int sampleRate)
    {
        const double hertz = 1681.974450955533;
        const double gainDb = 3.999843853973347;
        const double q = 0.7071752369554196;
        var k = Math.Tan(Math.PI * hertz / sampleRate);
        var high = Math.Pow(10, gainDb / 20);
        var band = Math.Pow(high, 0.4996667741545416);
        var a0 = 1 + (k / q) + (k * k);
        return new FilterSection(
            (high + (band * k / q) + (k * k)) / a0,
            2 * ((k * k) - high) / a0,
            (high - (band * k / q) + (k * k)) / a0,
            2 * ((k * k) - 1) / a0,
            (1 - (k / q) + (k * k)) / a0
        );
    }

    public static FilterSection HighPass(int sampleRate)
    {
        const double hertz = 38.13547087602444;
        const double q = 0.5003270373238773;
        var k = Math.Tan(Math.PI * hertz / sampleRate);
        var a0 = 1 + (k / q) + (k * k);
        return new FilterSection(1, -2, 1, 2 * ((k * k) - 1) / a0, (1 - (k / q) + (k * k)) / a0);
    }
}

/// <summary>Both filters of one channel, with their memory.</summary>
internal struct WeightedChannel(FilterSection shelf, FilterSection highPass)
{
    private double _s1;
    private double _s2;
    private double _h1;
    private double _h2;

    /// <summary>The weighted sample (transposed direct form II).</summary>
    public double Next(double sample)
    {
        var shelved = (shelf.B0 * sample) + _s1;
        _s1 = (shelf.B1 * sample) - (shelf.A1 * shelved) + _s2;
        _s2 = (shelf.B2 * sample) - (shelf.A2 * shelved);
        var passed = shelved + _h1;
        _h1 = (-2 * shelved) - (highPass.A1 * passed) + _h2;
        _h2 = shelved - (highPass.A2 * passed);
        return passed;
    }
}
