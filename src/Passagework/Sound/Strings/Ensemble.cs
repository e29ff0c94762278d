using System.Collections.Immutable;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Sound.Strings;

/// <summary>All strings of a guitar, and what they press on the bridge together.</summary>
internal sealed class Ensemble
{
    private const double LongestRing = 30;
    private const double QuietAfter = 80.0 / 60;
    private const double SilentAfter = 2;

    private readonly ImmutableArray<StringVoice> _voices;
    private readonly ImmutableArray<double> _opens;
    private readonly Voicing _voicing;
    private readonly int _sampleRate;
    private readonly float[] _bridge = new float[StringVoice.Block];

    /// <summary>The strings of a tuning with their events.</summary>
    public Ensemble(
        Voicing voicing,
        ImmutableArray<StringEvent> events,
        Tuning tuning,
        (ulong Seed, int SampleRate) noise
    )
    {
        _voicing = voicing;
        _sampleRate = noise.SampleRate;
        _opens = [.. Enumerable.Range(1, tuning.StringCount).Select(s => (double)tuning.Open(s).Midi)];
        var byString = events
            .Select((note, ordinal) => (Event: note, Ordinal: ordinal))
            .ToLookup(e => e.Event.String);
        _voices =
        [
            .. _opens.Select(
                (open, index) =>
                    new StringVoice(new(byString[index + 1], voicing, noise.SampleRate), voicing, open, noise)
            ),
        ];
        LastSample = Enumerable.Range(0, _voices.Length).Max(EndOf);
    }

    /// <summary>The sample by which the last decay has fallen by about 80 dB.</summary>
    public long LastSample { get; }

    /// <summary>Silences all strings, the first strokes from that sample on to come.</summary>
    public void Reset(long sample)
    {
        Array.Clear(_bridge);
        foreach (var voice in _voices)
        {
            voice.Reset(sample);
        }
    }

    /// <summary>Adds a block of all strings; false when none sounded.</summary>
    public bool Render(long first, Span<float> heard, Span<float> direct)
    {
        var sounding = false;
        foreach (var voice in _voices)
        {
            sounding |= voice.Render(first, _bridge, heard, direct);
        }

        Array.Clear(_bridge);
        foreach (var voice in _voices)
        {
            Samples.Add(voice.Bridge, _bridge);
        }

        return sounding;
    }

    /// <summary>The sample of the earliest stroke that may still be heard at a sample.</summary>
    public long SoundingFrom(long sample)
    {
        var earliest = sample;
        for (var i = 0; i < _voices.Length; i++)
        {
            earliest = Math.Min(earliest, SoundingFrom(i, sample));
        }

        return earliest;
    }

    private long SoundingFrom(int index, long sample)
    {
        var strokes = _voices[index].Part.Strokes;
        var bound = sample - (long)(LongestRing * _sampleRate);
        var earliest = sample;
        for (var i = _voices[index].Part.FirstFrom(sample) - 1; i >= 0; i--)
        {
            var stroke = strokes[i];
            if (stroke.First < bound || Ring(index, stroke, SilentAfter) + stroke.First < sample)
            {
                return earliest;
            }

            earliest = stroke.First;
            if (stroke.Fresh)
            {
                return earliest;
            }
        }

        return earliest;
    }

    private long EndOf(int index)
    {
        var strokes = _voices[index].Part.Strokes;
        return strokes.IsEmpty ? 0 : strokes[^1].First + Ring(index, strokes[^1], QuietAfter);
    }

    // Samples a stroke may sound: by its own decay as many times 60 dB, or to its release and the fade after it.
    private long Ring(int index, Stroke stroke, double times)
    {
        var law = _voicing.LossOf(_opens[index], stroke.Event.Key);
        var hertz = EqualTemperament.FrequencyOf(stroke.Event.Key).Value;
        var natural = Math.Min(LongestRing, times * law.Sixty(Math.Tau * hertz, hertz)) * _sampleRate;
        return (long)
            Math.Min(natural, stroke.Release - stroke.Start + (stroke.Fade * times) + StringVoice.Block);
    }
}
