using System.Collections.Immutable;
using Passagework.Sound.Strings;

namespace Passagework.Sound.Mixing;

/// <summary>One sound begun at an exact sample.</summary>
/// <param name="At">Its first sample.</param>
/// <param name="Sound">The sound, full length.</param>
/// <param name="Gain">What it is multiplied by.</param>
/// <param name="End">The sample from which it is faded out; the maximum lets it ring.</param>
public readonly record struct Strike(long At, float[] Sound, float Gain, long End = long.MaxValue);

/// <summary>Sounds rendered once and struck again and again: clicks, drums, bass, chords.</summary>
public sealed class StrikeTrack
{
    /// <summary>Samples of the fade at an end, so that it doesn't click: 10 ms at 48 kHz.</summary>
    private const int FadeSamples = 480;

    private readonly ImmutableArray<Strike> _strikes;
    private readonly long _longest;

    /// <summary>The strikes, in any order.</summary>
    public StrikeTrack(IEnumerable<Strike> strikes)
    {
        _strikes = [.. strikes.OrderBy(strike => strike.At)];
        _longest = _strikes.Select(strike => (long)strike.Sound.Length).DefaultIfEmpty(0).Max();
        SamplesNeeded = _strikes.Select(EndOf).DefaultIfEmpty(0).Max();
    }

    /// <summary>Samples from the start to the end of the last sound.</summary>
    public long SamplesNeeded { get; }

    /// <summary>Fills the span with the sound from that sample on; any stretch gives the same samples as the whole.</summary>
    public void Render(Span<float> into, long firstSample)
    {
        into.Clear();
        var beyond = firstSample + into.Length;
        for (var i = First(firstSample - _longest); i < _strikes.Length && _strikes[i].At < beyond; i++)
        {
            Add(_strikes[i], into, firstSample);
        }
    }

    private static void Add(Strike strike, Span<float> into, long firstSample)
    {
        var from = Math.Max(strike.At, firstSample);
        var to = Math.Min(EndOf(strike), firstSample + into.Length);
        if (from >= to)
        {
            return;
        }

        var sound = strike.Sound.AsSpan((int)(from - strike.At), (int)(to - from));
        var target = into.Slice((int)(from - firstSample), sound.Length);
        var whole = (int)Math.Clamp(strike.End - from, 0, sound.Length);
        Samples.Add(sound[..whole], target[..whole], strike.Gain);
        for (var i = whole; i < sound.Length; i++)
        {
            var left = 1 - ((from + i - strike.End) / (float)FadeSamples);
            target[i] += strike.Gain * left * sound[i];
        }
    }

    private static long EndOf(Strike strike)
    {
        var whole = strike.At + strike.Sound.Length;
        return strike.End > whole ? whole : Math.Min(whole, Math.Max(strike.At, strike.End) + FadeSamples);
    }

    private int First(long sample)
    {
        var (before, beyond) = (-1, _strikes.Length);
        while (beyond - before > 1)
        {
            var middle = (before + beyond) / 2;
            (before, beyond) = _strikes[middle].At < sample ? (middle, beyond) : (before, middle);
        }

        return beyond;
    }
}
