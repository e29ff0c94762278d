using System.Collections.Immutable;
using Passagework.Choosing.Measures;
using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Choosing.Discovery;

/// <summary>What is searched, for whom, and what counts.</summary>
public sealed record DiscoveryQuestion
{
    /// <summary>The candidates.</summary>
    public required CellSpace Space { get; init; }

    /// <summary>The student.</summary>
    public required Player Player { get; init; }

    /// <summary>The repertoire in force, planned for the same student and technique; null when there is none.</summary>
    public PieceCollection? Music { get; init; }

    /// <summary>What a find must not be.</summary>
    public DiscoveryFilters Filters { get; init; } = new();

    /// <summary>How much each criterion counts, by its id; one that is not named does not count.</summary>
    public ImmutableDictionary<string, double> Weights { get; init; } =
        RawMeasures.Criteria.Take(5).ToImmutableDictionary(id => id, _ => 0.2);

    /// <summary>From raw measures to values.</summary>
    public Anchors Anchors { get; init; } = Anchors.BuiltIn;

    /// <summary>How many finds are wanted.</summary>
    public int Count { get; init; } = 5;

    /// <summary>How many threads search, at least 1; the answer is the same for any number.</summary>
    public int Threads { get; init; } = 1;
}
