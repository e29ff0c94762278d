using System.Numerics;

namespace Passagework.Tests.Sound.Measuring;

/// <summary>Magnitudes of a stretch of samples by frequency; the textbook transform.</summary>
internal static class Spectrum
{
    /// <summary>Magnitudes from 0 to half the rate of as many samples as a power of two, under a raised cosine.</summary>
    public static double[] Of(ReadOnlySpan<float> samples)
    {
        var values = new Complex[samples.Length];
        for (var i = 0; i < samples.Length; i++)
        {
            values[i] = samples[i] * (0.5 - (0.5 * Math.Cos(Math.Tau * i / samples.Length)));
        }

        Transform(values);
        return [.. values.Take((samples.Length / 2) + 1).Select(v => v.Magnitude)];
    }

    /// <summary>The centre of the spectrum in hertz, each frequency weighed by its magnitude.</summary>
    public static double Centroid(ReadOnlySpan<float> samples, int rate)
    {
        var magnitudes = Of(samples);
        var weighed = magnitudes.Select((m, bin) => m * bin).Sum() / magnitudes.Sum();
        return weighed * rate / samples.Length;
    }

    private static void Transform(Span<Complex> values)
    {
        if (values.Length == 1)
        {
            return;
        }

        var half = values.Length / 2;
        var (even, odd) = (new Complex[half], new Complex[half]);
        for (var i = 0; i < half; i++)
        {
            (even[i], odd[i]) = (values[2 * i], values[(2 * i) + 1]);
        }

        Transform(even);
        Transform(odd);
        for (var i = 0; i < half; i++)
        {
            var turned = odd[i] * Complex.FromPolarCoordinates(1, -Math.PI * i / half);
            (values[i], values[i + half]) = (even[i] + turned, even[i] - turned);
        }
    }
}
