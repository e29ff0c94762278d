using System.Numerics;

namespace Passagework.Sound.Strings;

/// <summary>The filter that closes the loop of a string: a whole delay, then ten taps for loss and for the rest of the delay.</summary>
/// <remarks>
/// Five symmetric taps give the loss; being symmetric they delay every partial by exactly two samples. Six taps of a
/// Lagrange interpolator of order five, used between its two middle taps where its gain never exceeds one (Laakso,
/// Välimäki, Karjalainen &amp; Laine 1996), give the fraction of a sample. A loop of taps only can be computed many
/// samples at a time, for no sample needs one nearer than <see cref="Delay"/>.
/// </remarks>
internal sealed class LoopTaps
{
    /// <summary>Taps of the closing filter.</summary>
    public const int Count = LossTaps + LagrangeTaps - 1;

    private const int LossTaps = 5;
    private const int LagrangeTaps = 6;
    private const double LossDelay = 2;
    private const double MostGain = 0.999999;

    /// <summary>Samples from a sample back to the nearest one it depends on; at least 1.</summary>
    public int Delay { get; private set; } = 1;

    /// <summary>The taps, the longest delay first, so that they lie along the past as it lies in memory.</summary>
    public float[] Reversed { get; } = new float[Count];

    /// <summary>The same taps, each in every lane of a vector.</summary>
    public Vector<float>[] Spread { get; } = new Vector<float>[Count];

    /// <summary>Samples of one period.</summary>
    public double Period { get; private set; }

    /// <summary>Sets the loop for that fundamental and that loss.</summary>
    public void Tune(double frequency, LossLaw law, int sampleRate)
    {
        Period = Math.Max(sampleRate / frequency, 6);
        frequency = sampleRate / Period;
        var behind = Period - LossDelay;
        Delay = (int)Math.Floor(behind - 2);
        var omega = Math.Tau / Period;
        Span<double> lagrange = stackalloc double[LagrangeTaps];
        var fraction = behind - Delay;
        Interpolate(lagrange, fraction);
        Interpolate(lagrange, Math.Clamp((2 * fraction) - PhaseDelay(lagrange, omega), 2, 3));
        Span<double> loss = stackalloc double[LossTaps];
        Lose(loss, law, frequency, sampleRate);
        for (var tap = 0; tap < Count; tap++)
        {
            var sum = 0.0;
            for (var k = Math.Max(0, tap - LagrangeTaps + 1); k <= Math.Min(tap, LossTaps - 1); k++)
            {
                sum += loss[k] * lagrange[tap - k];
            }

            Reversed[Count - 1 - tap] = (float)sum;
            Spread[Count - 1 - tap] = new((float)sum);
        }
    }

    /// <summary>Gain of the loop at an angular frequency per sample.</summary>
    public double GainAt(double omega)
    {
        double real = 0;
        double imaginary = 0;
        for (var tap = 0; tap < Count; tap++)
        {
            real += Reversed[tap] * Math.Cos(omega * tap);
            imaginary += Reversed[tap] * Math.Sin(omega * tap);
        }

        return Math.Sqrt((real * real) + (imaginary * imaginary));
    }

    private static void Interpolate(Span<double> taps, double delay)
    {
        for (var k = 0; k < taps.Length; k++)
        {
            taps[k] = 1;
            for (var other = 0; other < taps.Length; other++)
            {
                if (other != k)
                {
                    taps[k] *= (delay - other) / (k - other);
                }
            }
        }
    }

    private static double PhaseDelay(ReadOnlySpan<double> taps, double omega)
    {
        double real = 0;
        double imaginary = 0;
        for (var k = 0; k < taps.Length; k++)
        {
            real += taps[k] * Math.Cos(omega * k);
            imaginary += taps[k] * Math.Sin(omega * k);
        }

        return Math.Atan2(imaginary, real) / omega;
    }

    /// <summary>
    /// The gain a₀ + a₁s + a₂s², s = sin²(ω/2), through the law at the fundamental, in the middle and high up; kept
    /// falling from 0 to half the rate, never negative and never above one.
    /// </summary>
    private static void Lose(Span<double> taps, LossLaw law, double frequency, int sampleRate)
    {
        var low = At(law, frequency, frequency, sampleRate);
        var middleAt = Math.Min(Math.Max(2000, 3 * frequency), 0.3 * sampleRate);
        var middle = At(law, middleAt, frequency, sampleRate);
        var high = At(law, Math.Min(Math.Max(8000, 2 * middleAt), 0.45 * sampleRate), frequency, sampleRate);
        var slope = (middle.Gain - low.Gain) / (middle.S - low.S);
        var curve = (((high.Gain - low.Gain) / (high.S - low.S)) - slope) / (high.S - middle.S);
        slope = Math.Min(0, slope - (curve * (low.S + middle.S)));
        curve = Math.Min(curve, -slope / 2);
        var start = Math.Min(low.Gain - (low.S * (slope + (curve * low.S))), MostGain);
        if (start + slope + curve < 0)
        {
            // Falls below nothing: a straight fall that ends at nothing, through the fundamental.
            start = Math.Min(low.Gain / (1 - low.S), MostGain);
            slope = -start;
            curve = 0;
        }

        taps[0] = taps[4] = curve / 16;
        taps[1] = taps[3] = -(slope + curve) / 4;
        taps[2] = start + (slope / 2) + (curve * 6 / 16);
    }

    private static (double S, double Gain) At(LossLaw law, double hertz, double fundamental, int sampleRate)
    {
        var sine = Math.Sin(Math.PI * hertz / sampleRate);
        return (sine * sine, law.Gain(Math.Tau * hertz, fundamental));
    }
}
