using System.Collections.Immutable;
using Passagework.Instrument;
using Passagework.Sound.Strings;

namespace Passagework.Sound;

/// <summary>Renders string events; any stretch on its own, joined without a gap.</summary>
/// <remarks>
/// Time is cut into blocks that begin at multiples of their length, whatever is asked for, so that a stretch rendered
/// on its own goes through the same steps as the whole. A string that is struck anew forgets what it did before;
/// therefore a jump needs to go back only to the strokes that still sound.
/// </remarks>
public sealed class GuitarRenderer
{
    private const int LowestRate = 22_050;
    private const int HighestRate = 192_000;
    private const double WarmSeconds = 0.6;

    private readonly Ensemble _strings;
    private readonly IOutput _output;
    private readonly int _sampleRate;
    private readonly float[] _block = new float[StringVoice.Block];
    private readonly float[] _direct = new float[StringVoice.Block];
    private long _blockStart = long.MinValue;

    /// <summary>A renderer for these events, in any order.</summary>
    /// <param name="sound">The instrument heard.</param>
    /// <param name="events">What happens to its strings.</param>
    /// <param name="sampleRate">Samples a second, 22,050 to 192,000.</param>
    /// <param name="seed">Chooses the noise of pick and fingers.</param>
    /// <param name="tuning">The open strings; null is standard tuning.</param>
    /// <exception cref="ArgumentOutOfRangeException">The rate or an event is outside what can be rendered.</exception>
    public GuitarRenderer(
        GuitarSound sound,
        ImmutableArray<StringEvent> events,
        int sampleRate,
        ulong seed = 1,
        Tuning? tuning = null
    )
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(sampleRate, LowestRate);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(sampleRate, HighestRate);
        tuning ??= Tuning.Standard;
        foreach (var note in events)
        {
            StringEventRules.Require(note, tuning.StringCount);
        }

        _sampleRate = sampleRate;
        _strings = new(Voicing.For(sound), events, tuning, (seed, sampleRate));
        _output = sound switch
        {
            GuitarSound.CleanElectric => new CleanOutput(sampleRate),
            GuitarSound.DrivenElectric => new DrivenOutput(sampleRate),
            _ => new BodyOutput(sound, sampleRate),
        };
        SamplesNeeded = _strings.LastSample;
    }

    /// <summary>Samples from the start to the end of the last decay: where it has fallen by about 80 dB, at most 30 s.</summary>
    public long SamplesNeeded { get; }

    /// <summary>
    /// Fills the span with the mono sound from that sample on. Successive calls continue; after a jump the strings
    /// that sound there are brought to where they would be.
    /// </summary>
    public void Render(Span<float> into, long firstSample)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(firstSample);
        for (var done = 0; done < into.Length; )
        {
            var wanted = firstSample + done + _output.Latency;
            MoveTo(wanted);
            var offset = (int)(wanted - _blockStart);
            var count = Math.Min(_block.Length - offset, into.Length - done);
            _block.AsSpan(offset, count).CopyTo(into[done..]);
            done += count;
        }
    }

    private void MoveTo(long sample)
    {
        var target = Aligned(sample);
        if (target == _blockStart)
        {
            return;
        }

        if (target != _blockStart + StringVoice.Block)
        {
            var warm = Math.Max(0, target - (long)(WarmSeconds * _sampleRate));
            var start = Math.Max(0, Aligned(_strings.SoundingFrom(warm)));
            _strings.Reset(start);
            _output.Reset();
            _blockStart = start - StringVoice.Block;
        }

        while (_blockStart < target)
        {
            _blockStart += StringVoice.Block;
            RenderBlock();
        }
    }

    private void RenderBlock()
    {
        Array.Clear(_block);
        Array.Clear(_direct);
        var sounding = _strings.Render(_blockStart, _block, _direct);
        if (sounding || !_output.Quiet)
        {
            _output.Run(_block, _direct);
        }
    }

    private static long Aligned(long sample) =>
        Math.DivRem(sample, StringVoice.Block).Quotient * StringVoice.Block;
}
