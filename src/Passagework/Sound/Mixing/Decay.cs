namespace Passagework.Sound.Mixing;

/// <summary>Sines that die away, the stuff of clicks, bass and chords.</summary>
internal static class Decay
{
    private const double SixtyDecibels = 6.907755278982137;

    /// <summary>Adds one, by the recurrence of a damped resonator; nothing at or above half the sample rate.</summary>
    /// <param name="into">From its first sample on.</param>
    /// <param name="hertz">Its frequency.</param>
    /// <param name="amplitude">Its height at the start.</param>
    /// <param name="seconds">Time in which it falls by 60 dB.</param>
    /// <param name="sampleRate">Samples a second.</param>
    public static void Add(Span<float> into, double hertz, double amplitude, double seconds, int sampleRate)
    {
        if (hertz >= sampleRate / 2.0)
        {
            return;
        }

        var step = Math.Tau * hertz / sampleRate;
        var shrink = Math.Exp(-SixtyDecibels / (seconds * sampleRate));
        var (turn, square) = (2 * shrink * Math.Cos(step), shrink * shrink);
        // Sample -1 is zero, so that the first sample sounds already.
        var (older, old) = (0.0, amplitude * shrink * Math.Sin(step));
        foreach (ref var sample in into)
        {
            sample += (float)old;
            (older, old) = (old, (turn * old) - (square * older));
        }
    }

    /// <summary>Lets a sound begin over so many samples and end over as many more, along half a cosine.</summary>
    public static void Shape(Span<float> sound, int rise, int fall)
    {
        for (var i = 0; i < rise && i < sound.Length; i++)
        {
            sound[i] *= (float)(0.5 - (0.5 * Math.Cos(Math.PI * (i + 1) / (rise + 1))));
        }

        for (var i = 0; i < fall && i < sound.Length; i++)
        {
            sound[^(i + 1)] *= (float)(0.5 - (0.5 * Math.Cos(Math.PI * i / fall)));
        }
    }
}
