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
        var lanes = Vector<float>.Count;
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
        for (var start = 0; start < _last.Length; start += Vector<float>.Count)
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

    private void AddLanes(int start, ReadOnlySpan<float> input, Span<float> into)
    {
        var (near, far) = (new Vector<float>(_near, start), new Vector<float>(_far, start));
        var gain = new Vector<float>(_gain, start);
        var (last, beforeLast) = (new Vector<float>(_last, start), new Vector<float>(_beforeLast, start));
        var (old, older) = (_inputLast, _inputBeforeLast);
        for (var i = 0; i < input.Length; i++)
        {
            var driven = Vector.FusedMultiplyAdd(far, beforeLast, gain * (input[i] - older));
            beforeLast = last;
            last = Vector.FusedMultiplyAdd(near, last, driven);
            into[i] += Vector.Sum(last);
            (older, old) = (old, input[i]);
        }

        last.CopyTo(_last, start);
        beforeLast.CopyTo(_beforeLast, start);
    }

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
