using System.Collections.Immutable;

namespace Passagework.Hands;

/// <summary>The numbers of a player's two hands, one for each entry of the parameter file.</summary>
public sealed record HandParameters
{
    private readonly ImmutableArray<double> _values;

    private readonly Lazy<double[]> _basis;
    private readonly Lazy<ParameterDraws> _draws;

    private HandParameters(ImmutableArray<double> values)
    {
        _values = values;
        _basis = new Lazy<double[]>(() => Hands.Basis.Of(_values.AsSpan()));
        _draws = new Lazy<ParameterDraws>(() => new ParameterDraws(this));
    }

    /// <summary>The value of the parameter with that letter.</summary>
    /// <exception cref="ArgumentException">There is no such letter.</exception>
    public double this[string id] => _values[IndexOf(id)];

    internal ReadOnlySpan<double> Values => _values.AsSpan();

    /// <summary>The products in which demands are linear; computed once.</summary>
    internal double[] Basis => _basis.Value;

    /// <summary>The joint draws about these values; computed once.</summary>
    internal ParameterDraws Draws => _draws.Value;

    /// <summary>The defaults at a level; between levels geometric, ω linear.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Below 0 or above 4, or not a number.</exception>
    public static HandParameters At(double level)
    {
        if (!(level >= 0 && level <= 4))
        {
            throw new ArgumentOutOfRangeException(nameof(level), level, "A level is 0 to 4.");
        }

        return new HandParameters([.. ParameterFile.Parameters.Select(entry => Between(entry, level))]);
    }

    /// <summary>The same hands with one number changed.</summary>
    /// <exception cref="ArgumentException">There is no such letter.</exception>
    public HandParameters With(string id, double value) => new(_values.SetItem(IndexOf(id), value));

    /// <summary>Content equality.</summary>
    public bool Equals(HandParameters? other) => other is not null && _values.SequenceEqual(other._values);

    /// <inheritdoc/>
    public override int GetHashCode() => _values[0].GetHashCode();

    private static int IndexOf(string id)
    {
        var parameters = ParameterFile.Parameters;
        for (var i = 0; i < parameters.Length; i++)
        {
            if (parameters[i].Id == id)
            {
                return i;
            }
        }

        throw new ArgumentException($"There is no parameter '{id}'.", nameof(id));
    }

    private static double Between(Parameter entry, double level)
    {
        var lower = (int)Math.Min(Math.Floor(level), 3);
        var share = level - lower;
        var (from, to) = (entry.Values[lower], entry.Values[lower + 1]);
        if (share is 0 or 1)
        {
            return share == 0 ? from : to;
        }

        return entry.Id == "ω" ? from + (share * (to - from)) : from * Math.Pow(to / from, share);
    }
}
