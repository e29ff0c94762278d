using Passagework.Foundation;
using Passagework.Sound.Mixing;

namespace Passagework.Sound.Backing;

/// <summary>Drums and cymbals from falling tones and filtered noise (all figures chosen by us).</summary>
internal static class DrumSounds
{
    private const ulong NoiseSeed = 0xD12_5EED;

    /// <summary>A tone that falls from 160 to 50 Hz within a few hundredths of a second.</summary>
    public static float[] Kick(int sampleRate)
    {
        var sound = new float[(int)(0.35 * sampleRate)];
        var turn = 0.0;
        for (var i = 0; i < sound.Length; i++)
        {
            var seconds = i / (double)sampleRate;
            turn += Math.Tau * (50 + (110 * Math.Exp(-seconds / 0.025))) / sampleRate;
            sound[i] = (float)(0.9 * Math.Exp(-seconds / 0.09) * Math.Sin(turn));
        }

        Decay.Shape(sound, sampleRate / 2000, sampleRate / 20);
        return sound;
    }

    /// <summary>Two tones of the skin and the rattle of the wires.</summary>
    public static float[] Snare(int sampleRate)
    {
        var sound = Noise(sampleRate, 0.25, 0.08, 1200);
        foreach (ref var sample in sound.AsSpan())
        {
            sample *= 0.5f;
        }

        Decay.Add(sound, 186, 0.35, 0.18, sampleRate);
        Decay.Add(sound, 331, 0.2, 0.12, sampleRate);
        Decay.Shape(sound, sampleRate / 4000, sampleRate / 50);
        return sound;
    }

    /// <summary>High noise with tones that fit no scale.</summary>
    public static float[] Cymbal(int sampleRate, double seconds, double amplitude)
    {
        var sound = Noise(sampleRate, 3 * seconds, seconds / 2, 7000);
        foreach (ref var sample in sound.AsSpan())
        {
            sample *= (float)amplitude;
        }

        foreach (var hertz in (ReadOnlySpan<double>)[5230, 6170, 7410, 8890])
        {
            Decay.Add(sound, hertz, 0.04 * amplitude, 2 * seconds, sampleRate);
        }

        Decay.Shape(sound, 0, sampleRate / 50);
        return sound;
    }

    // White noise that dies away, what lies below a frequency taken out by two one-pole filters.
    private static float[] Noise(int sampleRate, double seconds, double fallSeconds, double aboveHertz)
    {
        var chance = new SplitMix64(NoiseSeed);
        var sound = new float[(int)(seconds * sampleRate)];
        var keep = Math.Exp(-Math.Tau * aboveHertz / sampleRate);
        var (low, lower) = (0.0, 0.0);
        for (var i = 0; i < sound.Length; i++)
        {
            var white = (2 * chance.NextUniform()) - 1;
            low = white + (keep * (low - white));
            var high = white - low;
            lower = high + (keep * (lower - high));
            sound[i] = (float)((high - lower) * Math.Exp(-i / (fallSeconds * sampleRate)));
        }

        return sound;
    }
}
