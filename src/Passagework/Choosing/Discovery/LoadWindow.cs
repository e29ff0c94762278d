using Passagework.Hands;

namespace Passagework.Choosing.Discovery;

/// <summary>The heaviest window of raised loads, one load after the other.</summary>
internal struct LoadWindow
{
    private Last _last;
    private int _count;
    private double _sum;

    /// <summary>The largest sum of neighbouring raised loads so far.</summary>
    public double Largest { get; private set; }

    /// <summary>The next raised load.</summary>
    public void Add(double raised)
    {
        var slot = _count++ % HandConstants.WindowMoves;
        _sum += raised - _last[slot];
        _last[slot] = raised;
        Largest = Math.Max(Largest, _sum);
    }

    // An inline array has exactly one field, which is never named in code and must be writable.
#pragma warning disable RCS1169, RCS1213
    [System.Runtime.CompilerServices.InlineArray(Size)]
    private struct Last
    {
        private double _first;
    }
#pragma warning restore RCS1169, RCS1213

    private const int Size = 16;
}
