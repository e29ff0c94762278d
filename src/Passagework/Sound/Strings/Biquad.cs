namespace Passagework.Sound.Strings;

/// <summary>A filter of second order.</summary>
/// <remarks>Coefficients by the bilinear transform of analogue prototypes (Bristow-Johnson's widely published set).</remarks>
internal sealed class Biquad
{
    private const double Nothing = 1e-12;
    private readonly double _b0;
    private readonly double _b1;
    private readonly double _b2;
    private readonly double _a1;
    private readonly double _a2;
    private double _first;
    private double _second;

    private Biquad((double B0, double B1, double B2) zeros, (double A0, double A1, double A2) poles)
    {
        (_b0, _b1, _b2) = (zeros.B0 / poles.A0, zeros.B1 / poles.A0, zeros.B2 / poles.A0);
        (_a1, _a2) = (poles.A1 / poles.A0, poles.A2 / poles.A0);
    }

    /// <summary>Whether nothing is left in it.</summary>
    public bool Quiet => _first == 0 && _second == 0;

    /// <summary>Lets low frequencies through; the quality is the height of the resonance at the corner.</summary>
    public static Biquad LowPass(double hertz, double quality, int sampleRate)
    {
        var (cosine, alpha) = Corner(hertz, quality, sampleRate);
        var side = (1 - cosine) / 2;
        return new((side, 2 * side, side), (1 + alpha, -2 * cosine, 1 - alpha));
    }

    /// <summary>Lets high frequencies through; nothing at all at zero.</summary>
    public static Biquad HighPass(double hertz, double quality, int sampleRate)
    {
        var (cosine, alpha) = Corner(hertz, quality, sampleRate);
        var side = (1 + cosine) / 2;
        return new((side, -2 * side, side), (1 + alpha, -2 * cosine, 1 - alpha));
    }

    /// <summary>Raises what lies above a frequency, by decibels.</summary>
    public static Biquad HighShelf(double hertz, double decibels, int sampleRate)
    {
        var (cosine, alpha) = Corner(hertz, Math.Sqrt(0.5), sampleRate);
        var height = Math.Exp(decibels * Math.Log(10) / 40);
        var (more, less) = (height + 1, height - 1);
        var slope = 2 * Math.Sqrt(height) * alpha;
        return new(
            (
                height * (more + (less * cosine) + slope),
                -2 * height * (less + (more * cosine)),
                height * (more + (less * cosine) - slope)
            ),
            (more - (less * cosine) + slope, 2 * (less - (more * cosine)), more - (less * cosine) - slope)
        );
    }

    /// <summary>Raises or lowers what lies about a frequency, by decibels.</summary>
    public static Biquad Peak(double hertz, double quality, double decibels, int sampleRate)
    {
        var (cosine, alpha) = Corner(hertz, quality, sampleRate);
        var height = Math.Exp(decibels * Math.Log(10) / 40);
        return new(
            (1 + (alpha * height), -2 * cosine, 1 - (alpha * height)),
            (1 + (alpha / height), -2 * cosine, 1 - (alpha / height))
        );
    }

    /// <summary>Filters in place, one after another; in pairs, because two fill the time in which one waits.</summary>
    public static void Run(ReadOnlySpan<Biquad> filters, Span<float> samples)
    {
        var done = 0;
        for (; done + 1 < filters.Length; done += 2)
        {
            RunPair(filters[done], filters[done + 1], samples);
        }

        if (done < filters.Length)
        {
            filters[done].Run(samples);
        }
    }

    /// <summary>Filters in place.</summary>
    public void Run(Span<float> samples)
    {
        var (first, second) = (_first, _second);
        for (var i = 0; i < samples.Length; i++)
        {
            double x = samples[i];
            var y = (_b0 * x) + first;
            first = (_b1 * x) - (_a1 * y) + second;
            second = (_b2 * x) - (_a2 * y);
            samples[i] = (float)y;
        }

        Keep(first, second);
    }

    private static void RunPair(Biquad one, Biquad two, Span<float> samples)
    {
        var (first, second) = (one._first, one._second);
        var (third, fourth) = (two._first, two._second);
        for (var i = 0; i < samples.Length; i++)
        {
            double x = samples[i];
            var y = (one._b0 * x) + first;
            first = (one._b1 * x) - (one._a1 * y) + second;
            second = (one._b2 * x) - (one._a2 * y);
            var z = (two._b0 * y) + third;
            third = (two._b1 * y) - (two._a1 * z) + fourth;
            fourth = (two._b2 * y) - (two._a2 * z);
            samples[i] = (float)z;
        }

        one.Keep(first, second);
        two.Keep(third, fourth);
    }

    // What is far below hearing becomes nothing, before it becomes a slow tiny number.
    private void Keep(double first, double second)
    {
        var nothing = Math.Abs(first) < Nothing && Math.Abs(second) < Nothing;
        (_first, _second) = nothing ? (0, 0) : (first, second);
    }

    /// <summary>Forgets.</summary>
    public void Reset() => (_first, _second) = (0, 0);

    private static (double Cosine, double Alpha) Corner(double hertz, double quality, int sampleRate)
    {
        var omega = Math.Tau * Math.Min(hertz, 0.45 * sampleRate) / sampleRate;
        return (Math.Cos(omega), Math.Sin(omega) / (2 * quality));
    }
}
