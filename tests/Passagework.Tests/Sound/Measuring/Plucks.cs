using System.Collections.Immutable;
using Passagework.Sound;

namespace Passagework.Tests.Sound.Measuring;

/// <summary>Short ways to events and their sound.</summary>
internal static class Plucks
{
    public const int Rate = 44_100;

    /// <summary>Open keys of standard tuning by string number less one.</summary>
    public static readonly ImmutableArray<int> Open = [64, 59, 55, 50, 45, 40];

    public static StringEvent Pluck(
        int stringNumber,
        double fret,
        double seconds = 0,
        double end = double.PositiveInfinity
    ) =>
        new()
        {
            Seconds = seconds,
            String = stringNumber,
            Key = Open[stringNumber - 1] + fret,
            EndSeconds = end,
        };

    public static float[] Render(GuitarSound sound, double seconds, params ReadOnlySpan<StringEvent> events)
    {
        var samples = new float[(int)(seconds * Rate)];
        new GuitarRenderer(sound, [.. events], Rate).Render(samples, 0);
        return samples;
    }
}
