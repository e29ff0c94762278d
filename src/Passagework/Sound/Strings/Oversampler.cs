using System.Numerics;
using System.Runtime.InteropServices;

namespace Passagework.Sound.Strings;

/// <summary>Clips softly at four times the sample rate, so that what the bend adds above half the rate stays out.</summary>
/// <remarks>
/// The same windowed-sinc filter of 32 taps goes up and down, each of its four phases with eight taps: up, every phase
/// makes one of four samples; down, every phase weighs its own row of them.
/// </remarks>
internal sealed class Oversampler
{
    /// <summary>Samples by which the sound comes later: 31 samples of the fourfold rate, less the 3 by which going down looks ahead.</summary>
    public const int Latency = 7;

    private const int Phases = 4;
    private const int PhaseTaps = 8;
    private readonly Vector<float>[][] _taps = new Vector<float>[Phases][];
    private readonly float[] _input = new float[StringVoice.Block + PhaseTaps];
    private readonly float[][] _rows = new float[Phases][];

    /// <summary>A silent clipper.</summary>
    public Oversampler()
    {
        for (var phase = 0; phase < Phases; phase++)
        {
            _rows[phase] = new float[StringVoice.Block + PhaseTaps];
            _taps[phase] = new Vector<float>[PhaseTaps];
            for (var tap = 0; tap < PhaseTaps; tap++)
            {
                _taps[phase][tap] = new((float)Sinc((tap * Phases) + phase));
            }
        }
    }

    /// <summary>Clips a block in place.</summary>
    public void Run(Span<float> samples)
    {
        Shift(_input, samples.Length);
        samples.CopyTo(_input.AsSpan(PhaseTaps));
        for (var phase = 0; phase < Phases; phase++)
        {
            Shift(_rows[phase], samples.Length);
            var row = _rows[phase].AsSpan(PhaseTaps, samples.Length);
            row.Clear();
            Weigh(_input, _taps[phase], row);
            Clip(row);
        }

        samples.Clear();
        for (var phase = 0; phase < Phases; phase++)
        {
            // The sample made is that of the last row, so the rows meet the phases of the taps from the end.
            var taps = _taps[Phases - 1 - phase];
            Weigh(_rows[phase], taps, samples);
        }
    }

    /// <summary>Forgets.</summary>
    public void Reset()
    {
        Array.Clear(_input);
        foreach (var row in _rows)
        {
            Array.Clear(row);
        }
    }

    // Adds to every sample the taps' sum over it and what came before; the history lies before the block.
    private static void Weigh(float[] source, Vector<float>[] taps, Span<float> into)
    {
        ref var from = ref MemoryMarshal.GetArrayDataReference(source);
        for (var i = 0; i <= into.Length - Vector<float>.Count; i += Vector<float>.Count)
        {
            var sum = new Vector<float>(into[i..]);
            for (var tap = 0; tap < taps.Length; tap++)
            {
                var old = Vector.LoadUnsafe(ref from, (nuint)(PhaseTaps + i - tap));
                sum = Vector.FusedMultiplyAdd(old, taps[tap], sum);
            }

            sum.CopyTo(into[i..]);
        }
    }

    // Going up a sample has three silent neighbours, so it counts fourfold.
    // x(27 + x²)/(27 + 9x²), the Padé form of the hyperbolic tangent, which reaches 1 with slope 0 at 3.
    private static void Clip(Span<float> samples)
    {
        for (var i = 0; i <= samples.Length - Vector<float>.Count; i += Vector<float>.Count)
        {
            var x = Vector.Min(Vector.Max(Phases * new Vector<float>(samples[i..]), new(-3f)), new(3f));
            var square = x * x;
            (x * (new Vector<float>(27) + square) / (new Vector<float>(27) + (9f * square))).CopyTo(
                samples[i..]
            );
        }
    }

    private static void Shift(float[] line, int count) => line.AsSpan(count, PhaseTaps).CopyTo(line);

    private static double Sinc(int tap)
    {
        const int Length = Phases * PhaseTaps;
        var x = (tap - ((Length - 1) / 2.0)) / Phases;
        var sinc = Math.Abs(x) < 1e-9 ? 1 : Math.Sin(Math.PI * x) / (Math.PI * x);
        var angle = Math.Tau * (tap + 0.5) / Length;
        return sinc * (0.42 - (0.5 * Math.Cos(angle)) + (0.08 * Math.Cos(2 * angle))) / Phases;
    }
}
