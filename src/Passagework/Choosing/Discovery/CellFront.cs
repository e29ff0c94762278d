namespace Passagework.Choosing.Discovery;

/// <summary>The candidates that no other beats on everything, kept while candidates stream by.</summary>
/// <remarks>
/// One beats another if it is at least as good on every measure and better on one. Of exactly equal ones the first in visiting
/// order is kept and the rest are counted. Whoever beat the last candidate is asked first, as it probably beats the next.
/// </remarks>
internal sealed class CellFront(ComparedMeasure[] criteria)
{
    private readonly List<Entry> _entries = [];
    private double[] _values = [];

    /// <summary>The front in visiting order.</summary>
    public IEnumerable<Entry> InOrder => _entries.OrderBy(entry => entry.Number);

    /// <summary>How many there are.</summary>
    public int Count => _entries.Count;

    /// <summary>Puts a candidate to the test.</summary>
    /// <param name="number">Its place in the visiting order.</param>
    /// <param name="take">What is measured of it.</param>
    public void Offer(long number, CellTake take) => Offer(new Entry(number, take, 0));

    /// <summary>Takes over another front, equal ones with their counts.</summary>
    public void Merge(CellFront other)
    {
        foreach (var entry in other._entries)
        {
            Offer(entry);
        }
    }

    private void Offer(Entry entry)
    {
        Span<double> values = stackalloc double[criteria.Length];
        for (var k = 0; k < values.Length; k++)
        {
            values[k] = criteria[k].Sign * entry.Take.Of(criteria[k].Criterion);
        }

        for (var at = 0; at < _entries.Count; at++)
        {
            var (worse, better) = Compare(values, _values.AsSpan(at * values.Length, values.Length));
            if (!worse && !better)
            {
                _entries[at] = _entries[at].With(entry);
                return;
            }

            if (!better)
            {
                Swap(at, 0);
                return;
            }

            if (!worse)
            {
                RemoveAt(at--);
            }
        }

        Add(entry, values);
    }

    // Whether the first is worse on something, and better on something.
    private static (bool Worse, bool Better) Compare(ReadOnlySpan<double> one, ReadOnlySpan<double> other)
    {
        var (worse, better) = (false, false);
        for (var k = 0; k < one.Length; k++)
        {
            worse |= one[k] < other[k];
            better |= one[k] > other[k];
        }

        return (worse, better);
    }

    private void Add(Entry entry, ReadOnlySpan<double> values)
    {
        var start = _entries.Count * values.Length;
        if (start + values.Length > _values.Length)
        {
            Array.Resize(ref _values, Math.Max(64, 2 * _values.Length));
        }

        values.CopyTo(_values.AsSpan(start));
        _entries.Add(entry);
    }

    private void RemoveAt(int at)
    {
        Swap(at, _entries.Count - 1);
        _entries.RemoveAt(_entries.Count - 1);
    }

    private void Swap(int one, int other)
    {
        (_entries[one], _entries[other]) = (_entries[other], _entries[one]);
        for (var k = 0; k < criteria.Length; k++)
        {
            var (a, b) = ((one * criteria.Length) + k, (other * criteria.Length) + k);
            (_values[a], _values[b]) = (_values[b], _values[a]);
        }
    }

    /// <summary>A candidate on the front.</summary>
    /// <param name="Number">Its place in the visiting order.</param>
    /// <param name="Take">What is measured of it.</param>
    /// <param name="Alike">How many others measure exactly like it.</param>
    internal readonly record struct Entry(long Number, CellTake Take, long Alike)
    {
        /// <summary>One entry for two that measure alike: the earlier.</summary>
        public Entry With(Entry other) =>
            (other.Number < Number ? other : this) with
            {
                Alike = Alike + other.Alike + 1,
            };
    }
}
