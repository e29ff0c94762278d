using System.Numerics;

namespace Passagework.Sound.Strings;

/// <summary>Sums over samples, many at a time.</summary>
internal static class Samples
{
    /// <summary>Adds samples to others of the same number, times a gain.</summary>
    public static void Add(ReadOnlySpan<float> samples, Span<float> to, float gain = 1)
    {
        var done = 0;
        for (; done <= to.Length - Vector<float>.Count; done += Vector<float>.Count)
        {
            var sum = (new Vector<float>(samples[done..]) * gain) + new Vector<float>(to[done..]);
            sum.CopyTo(to[done..]);
        }

        for (; done < to.Length; done++)
        {
            to[done] += gain * samples[done];
        }
    }

    /// <summary>Multiplies samples by a gain.</summary>
    public static void Scale(Span<float> samples, float gain)
    {
        for (var i = 0; i < samples.Length; i++)
        {
            samples[i] *= gain;
        }
    }

    /// <summary>The largest magnitude.</summary>
    public static float Peak(ReadOnlySpan<float> samples)
    {
        var peaks = Vector<float>.Zero;
        var done = 0;
        for (; done <= samples.Length - Vector<float>.Count; done += Vector<float>.Count)
        {
            peaks = Vector.Max(peaks, Vector.Abs(new Vector<float>(samples[done..])));
        }

        var peak = 0f;
        for (var lane = 0; lane < Vector<float>.Count; lane++)
        {
            peak = Math.Max(peak, peaks[lane]);
        }

        for (; done < samples.Length; done++)
        {
            peak = Math.Max(peak, Math.Abs(samples[done]));
        }

        return peak;
    }
}
