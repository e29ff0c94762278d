namespace Passagework.Hands;

/// <summary>
/// The least time of one transition for one hand as a sum of at most five terms, each a coefficient times an entry
/// of <see cref="Basis"/>; milliseconds once a player is put in.
/// </summary>
internal readonly record struct Demand
{
    private readonly Terms _coefficients;
    private readonly Entries _entries;
    private readonly byte _count;

    private Demand(Terms coefficients, Entries entries, byte count)
    {
        _coefficients = coefficients;
        _entries = entries;
        _count = count;
    }

    /// <summary>No time at all.</summary>
    public static Demand None => default;

    /// <summary>Whether nothing is asked.</summary>
    public bool IsNone => _count == 0;

    /// <summary>One term.</summary>
    public static Demand Of(int entry, double coefficient) => None.Plus(entry, coefficient);

    /// <summary>This and one more term; a coefficient of 0 adds nothing.</summary>
    public Demand Plus(int entry, double coefficient)
    {
        if (coefficient == 0)
        {
            return this;
        }

        var (coefficients, entries) = (_coefficients, _entries);
        coefficients[_count] = coefficient;
        entries[_count] = (byte)entry;
        return new Demand(coefficients, entries, (byte)(_count + 1));
    }

    /// <summary>Every term times a factor.</summary>
    public Demand Times(double factor)
    {
        var coefficients = _coefficients;
        for (var i = 0; i < _count; i++)
        {
            coefficients[i] *= factor;
        }

        return new Demand(coefficients, _entries, _count);
    }

    /// <summary>The time in ms for the entries of a player.</summary>
    public double At(ReadOnlySpan<double> basis)
    {
        var sum = 0.0;
        for (var i = 0; i < _count; i++)
        {
            sum += _coefficients[i] * basis[_entries[i]];
        }

        return sum;
    }

    /// <summary>Adds the time in ms under every draw.</summary>
    public void AddTo(Span<double> sums, ParameterDraws draws)
    {
        for (var i = 0; i < _count; i++)
        {
            draws.AddTo(sums, _entries[i], _coefficients[i]);
        }
    }

    public bool Equals(Demand other)
    {
        var same = _count == other._count;
        for (var i = 0; same && i < _count; i++)
        {
            same = _entries[i] == other._entries[i] && _coefficients[i].Equals(other._coefficients[i]);
        }

        return same;
    }

    public override int GetHashCode()
    {
        var hash = new HashCode();
        for (var i = 0; i < _count; i++)
        {
            hash.Add(_coefficients[i]);
            hash.Add(_entries[i]);
        }

        return hash.ToHashCode();
    }

    // An inline array has exactly one field, which is never named in code and must be writable.
#pragma warning disable RCS1169, RCS1213
    [System.Runtime.CompilerServices.InlineArray(5)]
    private struct Terms
    {
        private double _first;
    }

    [System.Runtime.CompilerServices.InlineArray(5)]
    private struct Entries
    {
        private byte _first;
    }
#pragma warning restore RCS1169, RCS1213
}
