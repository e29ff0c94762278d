using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Passagework.Sound.Strings;

/// <summary>The waveguide of one string: its past, and the filter that makes the next samples of it.</summary>
internal sealed class DelayLoop
{
    private const int Room = 4096;
    private readonly float[] _past;
    private readonly int _history;
    private int _at;

    /// <summary>A silent string that remembers that many samples.</summary>
    public DelayLoop(int history)
    {
        _history = history;
        _past = new float[history + Room];
        _at = history;
    }

    /// <summary>Stills the string.</summary>
    public void Clear()
    {
        Array.Clear(_past);
        _at = _history;
    }

    /// <summary>The next samples, driven from outside.</summary>
    public void Run(LoopTaps taps, ReadOnlySpan<float> drive, Span<float> into)
    {
        MakeRoom(into.Length);
        for (var done = 0; done < into.Length; )
        {
            var count = Math.Min(taps.Delay, into.Length - done);
            Filter(taps, drive.Slice(done, count));
            done += count;
        }

        _past.AsSpan(_at - into.Length, into.Length).CopyTo(into);
    }

    /// <summary>The next samples while the loop goes over from one filter to another.</summary>
    /// <param name="filters">The two filters.</param>
    /// <param name="mix">Share of the second before the first sample, and what every sample adds to it.</param>
    /// <param name="drive">From outside.</param>
    /// <param name="into">The samples.</param>
    public void Glide(
        (LoopTaps From, LoopTaps To) filters,
        (double Start, double Step) mix,
        ReadOnlySpan<float> drive,
        Span<float> into
    )
    {
        MakeRoom(into.Length);
        for (var i = 0; i < into.Length; i++)
        {
            var share = (float)(mix.Start + ((i + 1) * mix.Step));
            var from = One(filters.From);
            var to = One(filters.To);
            _past[_at] = drive[i] + from + (share * (to - from));
            into[i] = _past[_at];
            _at++;
        }
    }

    /// <summary>Takes from the samples just made what the string was that much earlier.</summary>
    public void SubtractPast(double delay, Span<float> from)
    {
        var whole = (int)Math.Floor(-delay);
        var share = (float)(-delay - whole);
        var past = _past.AsSpan(_at - from.Length + whole, from.Length + 1);
        for (var i = 0; i < from.Length; i++)
        {
            from[i] -= past[i] + (share * (past[i + 1] - past[i]));
        }
    }

    /// <summary>The last period of the string.</summary>
    public ReadOnlySpan<float> Last(double period)
    {
        var count = (int)Math.Ceiling(period);
        return _past.AsSpan(_at - count, count);
    }

    private void MakeRoom(int count)
    {
        if (_at + count > _past.Length)
        {
            _past.AsSpan(_at - _history, _history).CopyTo(_past);
            _at = _history;
        }
    }

    private float One(LoopTaps taps)
    {
        var past = _past.AsSpan(_at - taps.Delay - LoopTaps.Count + 1, LoopTaps.Count);
        var sum = 0f;
        for (var tap = 0; tap < LoopTaps.Count; tap++)
        {
            sum = MathF.FusedMultiplyAdd(past[tap], taps.Reversed[tap], sum);
        }

        return sum;
    }

    // No sample of these needs another of them, so a vector of them is made at once.
    private void Filter(LoopTaps taps, ReadOnlySpan<float> drive)
    {
        // Bounds: the two ends of what is read and written, once for all.
        _ = _past[_at + drive.Length - 1];
        unchecked
        {
            ref var past = ref _past[_at - taps.Delay - LoopTaps.Count + 1];
            ref var next = ref _past[_at];
            ref var driven = ref MemoryMarshal.GetReference(drive);
            var done = (nuint)0;
            var vectors = (nuint)(drive.Length / Vector<float>.Count * Vector<float>.Count);
            for (; done < vectors; done += (nuint)Vector<float>.Count)
            {
                var sum = Weigh(
                    taps.Spread,
                    ref Unsafe.Add(ref past, done),
                    Vector.LoadUnsafe(ref driven, done)
                );
                sum.StoreUnsafe(ref next, done);
            }

            for (; done < (nuint)drive.Length; done++)
            {
                var sum = Unsafe.Add(ref driven, done);
                for (var tap = 0; tap < LoopTaps.Count; tap++)
                {
                    sum = MathF.FusedMultiplyAdd(
                        Unsafe.Add(ref past, done + (nuint)tap),
                        taps.Reversed[tap],
                        sum
                    );
                }

                Unsafe.Add(ref next, done) = sum;
            }

            _at += drive.Length;
        }
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Vector<float> Weigh(Vector<float>[] taps, ref float past, Vector<float> sum)
    {
        sum = Vector.FusedMultiplyAdd(Vector.LoadUnsafe(ref past), taps[0], sum);
        sum = Vector.FusedMultiplyAdd(Vector.LoadUnsafe(ref past, 1), taps[1], sum);
        sum = Vector.FusedMultiplyAdd(Vector.LoadUnsafe(ref past, 2), taps[2], sum);
        sum = Vector.FusedMultiplyAdd(Vector.LoadUnsafe(ref past, 3), taps[3], sum);
        sum = Vector.FusedMultiplyAdd(Vector.LoadUnsafe(ref past, 4), taps[4], sum);
        sum = Vector.FusedMultiplyAdd(Vector.LoadUnsafe(ref past, 5), taps[5], sum);
        sum = Vector.FusedMultiplyAdd(Vector.LoadUnsafe(ref past, 6), taps[6], sum);
        sum = Vector.FusedMultiplyAdd(Vector.LoadUnsafe(ref past, 7), taps[7], sum);
        sum = Vector.FusedMultiplyAdd(Vector.LoadUnsafe(ref past, 8), taps[8], sum);
        return Vector.FusedMultiplyAdd(Vector.LoadUnsafe(ref past, 9), taps[9], sum);
    }
}
