namespace Passagework.Choosing.Discovery;

/// <summary>Counts the known moves of one line at a time.</summary>
internal sealed class MoveTally(KnownMoves known)
{
    private readonly int[] _counts = new int[known.Masses.Length];
    private readonly List<int> _touched = new(known.Masses.Length);
    private int _met;

    /// <summary>Forgets the last line.</summary>
    public void Clear()
    {
        foreach (var number in _touched)
        {
            _counts[number] = 0;
        }

        _touched.Clear();
        _met = 0;
    }

    /// <summary>Counts a move.</summary>
    public void Add(int move)
    {
        var number = known.Numbers[move];
        if (number == KnownMoves.Unknown)
        {
            return;
        }

        _met++;
        if (_counts[number]++ == 0)
        {
            _touched.Add(number);
        }
    }

    /// <summary>General use of a line of so many moves; NaN where there is nothing to compare.</summary>
    /// <param name="moves">Of the line.</param>
    /// <param name="leastCount">Times in one pass from which a move counts as practised.</param>
    public double GeneralUse(int moves, double leastCount)
    {
        if (known.Total == 0 || moves == 0)
        {
            return double.NaN;
        }

        var practised = 0L;
        foreach (var number in _touched)
        {
            practised += _counts[number] >= leastCount ? known.Masses[number] : 0;
        }

        return Measures.GeneralUse.Joined((double)_met / moves, (double)practised / known.Total);
    }
}
