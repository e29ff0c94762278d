using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Studio.Features.Shelf;

/// <summary>The shelf as its page shows it.</summary>
public sealed record ShelfPage
{
    /// <summary>For whom everything is measured.</summary>
    public required Player Player { get; init; }

    /// <summary>Words that were looked for; may be empty.</summary>
    public required string Search { get; init; }

    /// <summary>The filters, each with what is chosen; null for no choice.</summary>
    public required IReadOnlyList<(ShelfFilter Filter, ShelfChoice? Chosen)> Filters { get; init; }

    /// <summary>Own ones, ones that were begun, and the starting library, as far as there are any.</summary>
    public required IReadOnlyList<ShelfGroup> Groups { get; init; }

    /// <summary>Own ones that were thrown away, the latest first.</summary>
    public required IReadOnlyList<ShelfForm> ThrownAway { get; init; }

    /// <summary>What of the address could not be read; the rest counts.</summary>
    public Fault? Fault { get; init; }

    /// <summary>Whether words or filters leave anything out.</summary>
    public bool IsFiltered => Search.Length > 0 || Filters.Any(filter => filter.Chosen is not null);

    /// <summary>Exercises that are listed; a family counts once.</summary>
    public int Count => Groups.Sum(group => group.Rows.Count + group.More);
}
