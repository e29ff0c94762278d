using System.Collections.Immutable;
using Passagework.Sound.Strings;

namespace Passagework.Sound.Mixing;

/// <summary>Fills a span with the samples of one voice from a sample on.</summary>
public delegate void VoiceRenderer(Span<float> into, long firstSample);

/// <summary>One voice of a mix.</summary>
/// <param name="Part">What it plays, which decides how loud it is beside the others.</param>
/// <param name="Render">Its sound, one channel.</param>
/// <param name="Pan">From −1 (left) to 1 (right).</param>
/// <param name="Gain">What it is multiplied by.</param>
public sealed record MixVoice(MixPart Part, VoiceRenderer Render, double Pan = 0, double Gain = 1);

/// <summary>What a voice is in a mix.</summary>
public enum MixPart
{
    /// <summary>What is practised.</summary>
    Guitar,

    /// <summary>The click.</summary>
    Click,

    /// <summary>Drums, bass and chords.</summary>
    Backing,

    /// <summary>Held tones.</summary>
    Drone,
}

/// <summary>Voices added together at their levels, one stretch after another; memory does not depend on the length.</summary>
public sealed class Mixdown
{
    private const int Block = 4096;
    private readonly float[] _voice = new float[Block];
    private readonly float[] _left = new float[Block];
    private readonly float[] _right = new float[Block];

    /// <summary>A mix of voices.</summary>
    /// <param name="voices">The voices.</param>
    /// <param name="channels">1 or 2.</param>
    /// <param name="gain">What the sum is multiplied by.</param>
    public Mixdown(ImmutableArray<MixVoice> voices, int channels, double gain = 1)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(channels, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(channels, 2);
        Voices = voices;
        Channels = channels;
        Gain = gain;
    }

    /// <summary>1, or 2 interleaved.</summary>
    public int Channels { get; }

    /// <summary>What the sum is multiplied by.</summary>
    public double Gain { get; }

    /// <summary>The voices.</summary>
    public ImmutableArray<MixVoice> Voices { get; }

    /// <summary>Fills the span with interleaved samples below the ceiling.</summary>
    /// <param name="into">Its length is a multiple of the channels.</param>
    /// <param name="firstSample">The first one's number, counted in one channel.</param>
    public void Render(Span<float> into, long firstSample)
    {
        var frames = into.Length / Channels;
        for (var done = 0; done < frames; done += Block)
        {
            var count = Math.Min(Block, frames - done);
            var part = into.Slice(done * Channels, count * Channels);
            var left = _left.AsSpan(0, count);
            var right = _right.AsSpan(0, count);
            left.Clear();
            right.Clear();
            foreach (var voice in Voices)
            {
                var sound = _voice.AsSpan(0, count);
                voice.Render(sound, firstSample + done);
                Add(voice, sound, left, right);
            }

            Interleave(left, right, part);
            PeakCeiling.Apply(part);
        }
    }

    private void Add(MixVoice voice, ReadOnlySpan<float> sound, Span<float> left, Span<float> right)
    {
        var gain = Gain * voice.Gain;
        if (Channels == 1)
        {
            Samples.Add(sound, left, (float)gain);
            return;
        }

        // Equal power, 1 in the middle.
        var angle = (1 + voice.Pan) * Math.PI / 4;
        Samples.Add(sound, left, (float)(gain * Math.Sqrt(2) * Math.Cos(angle)));
        Samples.Add(sound, right, (float)(gain * Math.Sqrt(2) * Math.Sin(angle)));
    }

    private void Interleave(ReadOnlySpan<float> left, ReadOnlySpan<float> right, Span<float> into)
    {
        if (Channels == 1)
        {
            left.CopyTo(into);
            return;
        }

        for (var i = 0; i < left.Length; i++)
        {
            into[2 * i] = left[i];
            into[(2 * i) + 1] = right[i];
        }
    }
}
