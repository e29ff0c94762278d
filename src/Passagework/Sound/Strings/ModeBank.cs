using System.Numerics;

namespace Passagework.Sound.Strings;

/// <summary>The modes of a body side by side, each a resonance of second order.</summary>
internal sealed class ModeBank
{
    private const float Nothing = 1e-9f;
    private readonly float[] _near;
    private readonly float[] _far;
    private readonly float[] _gain;
    private readonly float[] _last;
    private readonly float[] _beforeLast;
    private float _inputLast;
    private float _inputBeforeLast;

    /// <summary>A bank of these modes: frequency, quality, gain at the peak.</summary>
    public ModeBank(ReadOnlySpan<(double Hertz, double Quality, double Gain)> modes, int sampleRate)
    {
        var lanes = 2 * Vector<float>.Count;
        var length = (modes.Length + lanes - 1) / lanes * lanes;
        (_near, _far, _gain) = (new float[length], new float[length], new float[length]);
        (_last, _beforeLast) = (new float[length], new float[length]);
        for (var i = 0; i < modes.Length; i++)
        {
            var radius = Math.Exp(-Math.PI * modes[i].Hertz / modes[i].Quality / sampleRate);
            _near[i] = (float)(2 * radius * Math.Cos(Math.Tau * modes[i].Hertz / sampleRate));
            _far[i] = (float)(-radius * radius);
            _gain[i] = (float)(modes[i].Gain * (1 - (radius * radius)) / 2);
        }
    }

    /// <summary>Whether nothing is left in it.</summary>
    public bool Quiet { get; private set; } = true;

    /// <summary>Adds what the modes give to samples, for an input of the same length.</summary>
    public void Add(ReadOnlySpan<float> input, Span<float> into)
    {
        for (var start = 0; start < _last.Length; start += 2 * Vector<float>.Count)
        {
            AddLanes(start, input, into);
        }

        _inputLast = input[^1];
        _inputBeforeLast = input[^2];
        Quiet = !IsAlive(_last) && !IsAlive(_beforeLast) && !input.ContainsAnyExcept(0f);
        if (Quiet)
        {
            Reset();
        }
    }

    /// <summary>Forgets.</summary>
    public void Reset()
    {
        Array.Clear(_last);
        Array.Clear(_beforeLast);
        (_inputLast, _inputBeforeLast) = (0, 0);
        Quiet = true;
    }

    // Two vectors of modes at a time, so that one is computed while the other waits.
    private void AddLanes(int start, ReadOnlySpan<float> input, Span<float> into)
    {
        var next = start + Vector<float>.Count;
        var (near, far, gain) = (At(_near, start), At(_far, start), At(_gain, start));
        var (near2, far2, gain2) = (At(_near, next), At(_far, next), At(_gain, next));
        var (last, beforeLast) = (At(_last, start), At(_beforeLast, start));
        var (last2, beforeLast2) = (At(_last, next), At(_beforeLast, next));
        var (old, older) = (_inputLast, _inputBeforeLast);
        for (var i = 0; i < input.Length; i++)
        {
            var drive = new Vector<float>(input[i] - older);
            var now = Vector.FusedMultiplyAdd(
                near,
                last,
                Vector.FusedMultiplyAdd(far, beforeLast, gain * drive)
            );
            var now2 = Vector.FusedMultiplyAdd(
                near2,
                last2,
                Vector.FusedMultiplyAdd(far2, beforeLast2, gain2 * drive)
            );
            (beforeLast, last) = (last, now);
            (beforeLast2, last2) = (last2, now2);
            into[i] += Vector.Sum(now + now2);
            (older, old) = (old, input[i]);
        }

        last.CopyTo(_last, start);
        beforeLast.CopyTo(_beforeLast, start);
        last2.CopyTo(_last, next);
        beforeLast2.CopyTo(_beforeLast, next);
    }

    private static Vector<float> At(float[] values, int start) => new(values, start);

    private static bool IsAlive(ReadOnlySpan<float> values)
    {
        foreach (var value in values)
        {
            if (Math.Abs(value) > Nothing)
            {
                return true;
            }
        }

        return false;
    }
}
