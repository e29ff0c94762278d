using System.Runtime.InteropServices;
using Passagework.Sound.Mixing;
using Passagework.Sound.Performance;

namespace Passagework.Studio.Features.Sound;

/// <summary>A sound that is planned and never changes; its samples are made when they are asked for.</summary>
/// <param name="arrangement">Its voices, one channel, not levelled.</param>
/// <param name="times">Where its notes and bars are.</param>
/// <param name="shape">Which part of it is repeated.</param>
/// <param name="level">Levels the voices; called at the first sample that is asked for.</param>
internal sealed class PlayedSound(
    Arrangement arrangement,
    TimeMap times,
    LoopShape shape,
    Func<Arrangement, Mixdown> level
)
{
    private readonly Lock _one = new();
    private Mixdown? _mix;

    /// <summary>Where its notes, bars and beats are.</summary>
    public TimeMap Times => times;

    /// <summary>Samples to the end of the last sound.</summary>
    public long Samples => arrangement.Samples;

    /// <summary>The samples that are heard again and again after the first time through; null for a sound that ends.</summary>
    public (long From, long To)? Repeated
    {
        get
        {
            if (shape.Repeated == 0)
            {
                return null;
            }

            var first = times.Passes[1];
            return times.Samples(
                new BarRange(first.FirstBar, first.Bars * shape.Repeated),
                arrangement.SampleRate
            );
        }
    }

    /// <summary>Samples as 32-bit floating-point numbers, little-endian.</summary>
    /// <param name="first">The first one's number.</param>
    /// <param name="count">How many.</param>
    /// <remarks>
    /// Successive calls join bit for bit. After a jump the strings are brought to where they would be, within −80 dBFS.
    /// </remarks>
    public byte[] Pcm(long first, int count)
    {
        var bytes = new byte[count * sizeof(float)];
        lock (_one)
        {
            _mix ??= level(arrangement);
            _mix.Render(MemoryMarshal.Cast<byte, float>(bytes.AsSpan()), first);
        }

        return bytes;
    }
}
