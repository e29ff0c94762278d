using System.Numerics;

namespace Passagework.Tests.Sound.Measuring;

/// <summary>Figures of one note in samples, by plain sums: slow, and independent of the model.</summary>
internal static class Tone
{
    /// <summary>Hertz of the partial nearest to a frequency, from how its phase turns between two windows.</summary>
    public static double Frequency(ReadOnlySpan<float> samples, int rate, double near, double window = 0.25)
    {
        var length = (int)(window * rate);
        var hop = (int)(0.35 / near * rate);
        for (var pass = 0; pass < 4; pass++)
        {
            var first = Partial(samples[..length], rate, near);
            var second = Partial(samples.Slice(hop, length), rate, near);
            var turned = (second / first).Phase - (Math.Tau * near * hop / rate);
            near += Math.IEEERemainder(turned, Math.Tau) * rate / (Math.Tau * hop);
            hop = Math.Min(samples.Length - length, hop * 4);
        }

        return near;
    }

    /// <summary>Cents from one frequency up to another.</summary>
    public static double Cents(double from, double to) => 1200 * Math.Log2(to / from);

    /// <summary>Hertz of a MIDI key.</summary>
    public static double Hertz(double key) => 440 * Math.Pow(2, (key - 69) / 12);

    /// <summary>Seconds in which a partial falls by 60 dB, from its levels at the two ends of the samples.</summary>
    public static double Sixty(ReadOnlySpan<float> samples, int rate, double hertz, double window = 0.1)
    {
        var length = (int)(window * rate);
        var first = Partial(samples[..length], rate, hertz).Magnitude;
        var last = Partial(samples[^length..], rate, hertz).Magnitude;
        return (samples.Length - length) / (double)rate * 60 / Decibels(first / last);
    }

    /// <summary>Decibels of a ratio of amplitudes.</summary>
    public static double Decibels(double ratio) => 20 * Math.Log10(Math.Max(ratio, 1e-12));

    /// <summary>Amplitude and phase of a frequency in samples under a raised cosine.</summary>
    public static Complex Partial(ReadOnlySpan<float> samples, int rate, double hertz)
    {
        var turn = Complex.FromPolarCoordinates(1, -Math.Tau * hertz / rate);
        var (at, sum) = (Complex.One, Complex.Zero);
        for (var i = 0; i < samples.Length; i++)
        {
            sum += samples[i] * (1 - Math.Cos(Math.Tau * i / samples.Length)) * at;
            at *= turn;
        }

        return sum * 2 / samples.Length;
    }

    /// <summary>The largest magnitude.</summary>
    public static float Peak(ReadOnlySpan<float> samples)
    {
        var peak = 0f;
        foreach (var sample in samples)
        {
            peak = Math.Max(peak, Math.Abs(sample));
        }

        return peak;
    }

    /// <summary>Root of the mean square.</summary>
    public static double Rms(ReadOnlySpan<float> samples)
    {
        var sum = 0.0;
        foreach (var sample in samples)
        {
            sum += (double)sample * sample;
        }

        return Math.Sqrt(sum / Math.Max(1, samples.Length));
    }

    /// <summary>The first sample whose magnitude reaches a share of the peak of the first 40 ms from a sample on.</summary>
    public static int Onset(ReadOnlySpan<float> samples, int rate, int from, double share = 0.1)
    {
        var until = Math.Min(samples.Length, from + (rate / 25));
        var level = share * Peak(samples[from..until]);
        var at = from;
        while (at < until && Math.Abs(samples[at]) < level)
        {
            at++;
        }

        return at;
    }

    /// <summary>Seconds in which the level, over windows of 4 ms, rises from a tenth of its highest to nine tenths.</summary>
    public static double Attack(ReadOnlySpan<float> samples, int rate)
    {
        var window = rate / 250;
        var levels = new double[(samples.Length - window) / 8];
        for (var i = 0; i < levels.Length; i++)
        {
            levels[i] = Rms(samples.Slice(i * 8, window));
        }

        var top = levels.Max();
        var low = Array.FindIndex(levels, l => l >= 0.1 * top);
        var high = Array.FindIndex(levels, l => l >= 0.9 * top);
        return (high - low) * 8.0 / rate;
    }
}
