namespace Passagework.Sound.Strings;

/// <summary>What a stroke sends into the string: the step pair of a plucked string, rounded by what plucks it.</summary>
/// <remarks>
/// An ideal string let go at a share β of its length presses on the bridge in rectangular pulses of duty β (Fletcher
/// &amp; Rossing 1998, ch. 2): its partials are sin(nπβ)/n. One such period, less its mean, is the drive; rounding by a
/// raised cosine stands for the width of the contact and the time it takes to slip. All in closed form, so the start
/// may lie between two samples.
/// </remarks>
internal readonly record struct Pulse
{
    /// <summary>The start as a sample, fractions allowed.</summary>
    public required double Start { get; init; }

    /// <summary>Samples of a period.</summary>
    public required double Period { get; init; }

    /// <summary>Share of the string between bridge and stroke.</summary>
    public required double Share { get; init; }

    /// <summary>Samples of the rounding.</summary>
    public required double Width { get; init; }

    /// <summary>Height; the sign is the direction.</summary>
    public required double Height { get; init; }

    /// <summary>Height of the noise of the contact.</summary>
    public double NoiseHeight { get; init; }

    /// <summary>Samples in which the noise falls to a third.</summary>
    public double NoiseLength { get; init; }

    /// <summary>Chooses the noise.</summary>
    public ulong Seed { get; init; }

    /// <summary>First sample that is not zero.</summary>
    public long First => (long)Math.Ceiling(Start);

    /// <summary>Sample after the last that is not zero.</summary>
    public long End =>
        (long)Math.Ceiling(Start + Math.Max(Period + Width, NoiseHeight > 0 ? 6 * NoiseLength : 0));

    /// <summary>Adds the drive, and the noise heard past the string, to samples from one on.</summary>
    public void AddTo(Span<float> drive, Span<float> direct, long first)
    {
        var from = Math.Max(First, first);
        var end = Math.Min(End, first + drive.Length);
        for (var sample = from; sample < end; sample++)
        {
            var since = sample - Start;
            var open = Rounded(since);
            var shape = open - Rounded(since - (Share * Period)) - (Share * (open - Rounded(since - Period)));
            var noise = NoiseHeight > 0 ? NoiseAt(sample, since) : 0;
            drive[(int)(sample - first)] += (float)((Height * shape) + (0.5 * noise));
            direct[(int)(sample - first)] += (float)noise;
        }
    }

    private double Rounded(double since)
    {
        var x = since / Width;
        return x switch
        {
            <= 0 => 0,
            >= 1 => 1,
            _ => x - (Math.Sin(Math.Tau * x) / Math.Tau),
        };
    }

    // The difference of neighbours has no mean and little below a kilohertz: a scrape, not a thump.
    private double NoiseAt(long sample, double since)
    {
        var grows = Math.Min(1, since / 8);
        return NoiseHeight
            * grows
            * Math.Exp(-since / NoiseLength)
            * (Noise.At(Seed, sample) - Noise.At(Seed, sample - 1));
    }
}
