using System.Collections.Immutable;
using Passagework.Theory;

namespace Passagework.Sound.Click;

/// <summary>Held root and fifth, to hear pitches against.</summary>
public sealed class Drone
{
    private const int TableSize = 2048;
    private const double FadeSeconds = 0.4;
    private const int LowestRoot = 45;

    /// <summary>Strength of the partials, falling as in a soft reed (chosen by us).</summary>
    private static readonly ImmutableArray<double> Partials = [1, 0.6, 0.35, 0.25, 0.12, 0.08, 0.04];
    private static readonly float[] Table = Wave();

    private readonly ImmutableArray<double> _turns;
    private readonly double _fade;

    /// <summary>A drone on a root, with the fifth above it.</summary>
    /// <param name="root">The root; it sounds between A2 and G#3.</param>
    /// <param name="sampleRate">Samples a second.</param>
    /// <param name="seconds">When it has faded out.</param>
    public Drone(NoteName root, int sampleRate, double seconds)
    {
        var key = RootKey(root);
        _turns =
        [
            EqualTemperament.FrequencyOf(key).Value / sampleRate,
            EqualTemperament.FrequencyOf(key + 7).Value / sampleRate,
        ];
        _fade = FadeSeconds * sampleRate;
        SamplesNeeded = (long)(seconds * sampleRate);
    }

    /// <summary>The MIDI key on which a root sounds; the fifth lies seven above.</summary>
    public static int RootKey(NoteName root) =>
        LowestRoot + Foundation.WholeNumbers.Modulo(root.PitchClass - LowestRoot, 12);

    /// <summary>Samples to its end.</summary>
    public long SamplesNeeded { get; }

    /// <summary>Fills the span with the sound from that sample on; any stretch gives the same samples as the whole.</summary>
    public void Render(Span<float> into, long firstSample)
    {
        for (var i = 0; i < into.Length; i++)
        {
            var sample = firstSample + i;
            var level = Math.Clamp(Math.Min(sample, SamplesNeeded - sample) / _fade, 0, 1);
            into[i] =
                level > 0
                    ? (float)level * ((0.6f * At(_turns[0], sample)) + (0.4f * At(_turns[1], sample)))
                    : 0;
        }
    }

    private static float At(double turn, long sample)
    {
        var turns = turn * sample;
        var place = (turns - Math.Floor(turns)) * TableSize;
        var index = (int)place;
        var after = (float)(place - index);
        return Table[index] + (after * (Table[index + 1] - Table[index]));
    }

    private static float[] Wave()
    {
        var table = new float[TableSize + 1];
        for (var i = 0; i <= TableSize; i++)
        {
            var angle = Math.Tau * i / TableSize;
            table[i] = (float)(
                0.4 * Partials.Select((strength, at) => strength * Math.Sin((at + 1) * angle)).Sum()
            );
        }

        return table;
    }
}
