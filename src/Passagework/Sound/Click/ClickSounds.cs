using System.Collections.Immutable;
using Passagework.Sound.Mixing;

namespace Passagework.Sound.Click;

/// <summary>Short damped tones, higher and louder the more prominent (pitches and lengths chosen by us).</summary>
internal static class ClickSounds
{
    private const double LongestSeconds = 0.09;

    /// <summary>One for each weight, in its order; the first sample is never silent.</summary>
    public static ImmutableArray<float[]> Of(int sampleRate) =>
        [
            Tone(sampleRate, 2093, 0.9),
            Tone(sampleRate, 1661, 0.75),
            Tone(sampleRate, 1397, 0.65),
            Tone(sampleRate, 1397, 0.3),
            Tone(sampleRate, 740, 0.8),
        ];

    private static float[] Tone(int sampleRate, double hertz, double amplitude)
    {
        var sound = new float[(int)(LongestSeconds * sampleRate)];
        Decay.Add(sound, hertz, 0.8 * amplitude, 0.07, sampleRate);
        Decay.Add(sound, 2.76 * hertz, 0.2 * amplitude, 0.03, sampleRate);
        Decay.Shape(sound, 0, sampleRate / 100);
        return sound;
    }
}
