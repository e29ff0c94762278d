using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Choosing.Discovery;

/// <summary>What a search found.</summary>
public sealed record DiscoveryResult
{
    /// <summary>Candidates that were looked at, those removed included.</summary>
    public required long Visited { get; init; }

    /// <summary>All candidates there are.</summary>
    public required long Total { get; init; }

    /// <summary>Whether all were looked at; false when the search was stopped.</summary>
    public bool Complete => Visited == Total;

    /// <summary>How many none beats on everything.</summary>
    public required int Front { get; init; }

    /// <summary>How many candidates measure exactly like an earlier one of these.</summary>
    public required long Equal { get; init; }

    /// <summary>How many candidates each reason removed.</summary>
    public required ImmutableDictionary<Removal, long> Removed { get; init; }

    /// <summary>A few unlike ones, the best first.</summary>
    public required ImmutableArray<FoundCell> Found { get; init; }

    /// <summary>How many candidates play what an earlier one plays.</summary>
    public long Doubles => Removed.GetValueOrDefault(Removal.Double);
}

/// <summary>One find.</summary>
/// <param name="Name">From its shape; no other find of the answer has it.</param>
/// <param name="Recipe">The exercise.</param>
/// <param name="Raw">What is measured of it.</param>
/// <param name="Values">The values of the criteria in their order, 0 to 1; null where nothing can be measured.</param>
/// <param name="Errors">Their errors in the same order, in units of the value.</param>
/// <param name="LibraryId">The exercise of the starting library that it is in this layout, whatever its first stroke; null when it is new.</param>
public sealed record FoundCell(
    string Name,
    Recipe Recipe,
    RawMeasures Raw,
    ImmutableArray<double?> Values,
    ImmutableArray<double> Errors,
    string? LibraryId
);

/// <summary>How far a search is.</summary>
/// <param name="Visited">Candidates looked at.</param>
/// <param name="Total">All there are.</param>
/// <param name="Kept">How many none beats among those of the parts that are done.</param>
public readonly record struct DiscoveryProgress(long Visited, long Total, int Kept = 0);
