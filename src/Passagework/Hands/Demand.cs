namespace Passagework.Hands;

/// <summary>
/// The least time of one transition for one hand as a sum of terms, each a coefficient times an entry of
/// <see cref="Basis"/>; milliseconds once a player is put in. Five terms are enough for a single note; a chord's further
/// ones follow in a demand of their own.
/// </summary>
internal readonly record struct Demand
{
    private const int Most = 5;
    private readonly Terms _coefficients;
    private readonly Entries _entries;
    private readonly byte _count;
    private readonly Rest? _rest;

    private Demand(Terms coefficients, Entries entries, byte count, Rest? rest)
    {
        _coefficients = coefficients;
        _entries = entries;
        _count = count;
        _rest = rest;
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

        if (_count == Most)
        {
            var rest = new Rest((_rest?.Demand ?? None).Plus(entry, coefficient));
            return new Demand(_coefficients, _entries, _count, rest);
        }

        var (coefficients, entries) = (_coefficients, _entries);
        coefficients[_count] = coefficient;
        entries[_count] = (byte)entry;
        return new Demand(coefficients, entries, (byte)(_count + 1), null);
    }

    /// <summary>This and all terms of another.</summary>
    public Demand PlusAll(Demand other)
    {
        var sum = this;
        for (var i = 0; i < other._count; i++)
        {
            sum = sum.Plus(other._entries[i], other._coefficients[i]);
        }

        return other._rest is { } rest ? sum.PlusAll(rest.Demand) : sum;
    }

    /// <summary>The same as far as the player's movements do not overlap: every term times 1 − ω.</summary>
    public Demand Apart()
    {
        var entries = _entries;
        for (var i = 0; i < _count; i++)
        {
            entries[i] += Basis.Apart;
        }

        return new Demand(
            _coefficients,
            entries,
            _count,
            _rest is { } rest ? new Rest(rest.Demand.Apart()) : null
        );
    }

    /// <summary>Every term times a factor.</summary>
    public Demand Times(double factor)
    {
        var coefficients = _coefficients;
        for (var i = 0; i < _count; i++)
        {
            coefficients[i] *= factor;
        }

        return new Demand(
            coefficients,
            _entries,
            _count,
            _rest is { } rest ? new Rest(rest.Demand.Times(factor)) : null
        );
    }

    /// <summary>The time in ms for the entries of a player.</summary>
    public double At(ReadOnlySpan<double> basis)
    {
        var sum = 0.0;
        for (var i = 0; i < _count; i++)
        {
            sum += _coefficients[i] * basis[_entries[i]];
        }

        return _rest is { } rest ? sum + rest.Demand.At(basis) : sum;
    }

    /// <summary>The part of the time in ms that rests on assumed parameters.</summary>
    public double AssumedAt(ReadOnlySpan<double> basis)
    {
        var sum = _rest?.Demand.AssumedAt(basis) ?? 0;
        for (var i = 0; i < _count; i++)
        {
            sum += Basis.IsAssumed(_entries[i]) ? _coefficients[i] * basis[_entries[i]] : 0;
        }

        return sum;
    }

    /// <summary>The entries with their coefficients, in the order in which they were added.</summary>
    public IEnumerable<(int Entry, double Coefficient)> AllTerms()
    {
        for (var i = 0; i < _count; i++)
        {
            yield return (_entries[i], _coefficients[i]);
        }

        foreach (var term in _rest?.Demand.AllTerms() ?? [])
        {
            yield return term;
        }
    }

    /// <summary>Adds the time in ms under every draw.</summary>
    public void AddTo(Span<double> sums, ParameterDraws draws)
    {
        for (var i = 0; i < _count; i++)
        {
            draws.AddTo(sums, _entries[i], _coefficients[i]);
        }

        _rest?.Demand.AddTo(sums, draws);
    }

    public bool Equals(Demand other)
    {
        var same = _count == other._count && Equals(_rest, other._rest);
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

    private sealed record Rest(Demand Demand);

    // An inline array has exactly one field, which is never named in code and must be writable.
#pragma warning disable RCS1169, RCS1213
    [System.Runtime.CompilerServices.InlineArray(Most)]
    private struct Terms
    {
        private double _first;
    }

    [System.Runtime.CompilerServices.InlineArray(Most)]
    private struct Entries
    {
        private byte _first;
    }
#pragma warning restore RCS1169, RCS1213
}
