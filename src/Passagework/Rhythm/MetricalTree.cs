using System.Collections.Immutable;

namespace Passagework.Rhythm;

/// <summary>How a bar divides, level by level, and the weight that each pulse has by it.</summary>
/// <remarks>
/// The weight of a pulse is the number of levels with an onset there (F. Lerdahl and R. Jackendoff, A Generative Theory
/// of Tonal Music, 1983); the lowest level gives 1.
/// </remarks>
public sealed record MetricalTree
{
    private const int MostPerBeat = 64;

    private MetricalTree(ImmutableArray<int> divisions)
    {
        Divisions = divisions;
        var weights = new int[divisions.Aggregate(1, (product, division) => product * division)];
        var span = weights.Length;
        foreach (var division in divisions.Prepend(1))
        {
            span /= division;
            for (var pulse = 0; pulse < weights.Length; pulse += span)
            {
                weights[pulse]++;
            }
        }

        Weights = [.. weights];
    }

    /// <summary>Into how many parts the bar divides, then each part, down to the pulse; primes.</summary>
    public ImmutableArray<int> Divisions { get; }

    /// <summary>The weight of each pulse of the bar.</summary>
    public ImmutableArray<int> Weights { get; }

    /// <summary>Pulses in the bar.</summary>
    public int Pulses => Weights.Length;

    /// <summary>
    /// The bar of a metre with that many notes a felt beat: the beats halve first where they can, a beat of six notes is
    /// three pairs unless <paramref name="sixAsTriplets"/> makes it two threes.
    /// </summary>
    /// <exception cref="ArgumentOutOfRangeException">Fewer than 1 or more than 64 notes a beat.</exception>
    public static MetricalTree Of(Meter meter, int notesPerBeat, bool sixAsTriplets = false)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(notesPerBeat, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(notesPerBeat, MostPerBeat);
        var beat = Primes(notesPerBeat);
        return new MetricalTree([.. Primes(meter.BeatsPerBar), .. sixAsTriplets ? beat : beat.Reverse()]);
    }

    /// <summary>A bar that divides as told.</summary>
    /// <exception cref="ArgumentException">A division below 2, or more than 10,000 pulses.</exception>
    public static MetricalTree Of(params ImmutableArray<int> divisions)
    {
        var pulses = 1L;
        foreach (var division in divisions)
        {
            pulses *= Math.Clamp(division, 0, 10_001);
            if (division < 2 || pulses > 10_000)
            {
                throw new ArgumentException(
                    "Divisions of at least 2, at most 10,000 pulses.",
                    nameof(divisions)
                );
            }
        }

        return new MetricalTree(divisions);
    }

    /// <summary>Content equality.</summary>
    public bool Equals(MetricalTree? other) => other is not null && Divisions.SequenceEqual(other.Divisions);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Divisions.Length, Pulses);

    private static ImmutableArray<int> Primes(int number)
    {
        var primes = ImmutableArray.CreateBuilder<int>();
        for (var prime = 2; number > 1; prime++)
        {
            for (; number % prime == 0; number /= prime)
            {
                primes.Add(prime);
            }
        }

        return primes.ToImmutable();
    }
}
