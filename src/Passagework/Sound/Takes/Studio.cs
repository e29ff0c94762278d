using System.Collections.Immutable;
using Passagework.Instrument;

namespace Passagework.Sound.Takes;

/// <summary>The instrument of a take and how it is rendered.</summary>
internal sealed record Studio(GuitarSound Sound, int SampleRate, ulong Seed, Tuning Tuning)
{
    public GuitarRenderer Renderer(ImmutableArray<StringEvent> events) =>
        new(Sound, events, SampleRate, Seed, Tuning);
}
