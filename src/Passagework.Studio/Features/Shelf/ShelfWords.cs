namespace Passagework.Studio.Features.Shelf;

/// <summary>What an address asks of the shelf, as typed; null or empty where it asks nothing.</summary>
public sealed record ShelfWords
{
    /// <summary>Words to find.</summary>
    public string? Search { get; init; }

    /// <summary>Name of the level of the player.</summary>
    public string? Level { get; init; }

    /// <summary>The chosen key of each filter, by its name.</summary>
    public IReadOnlyDictionary<string, string?> Filters { get; init; } = new Dictionary<string, string?>();

    /// <summary>Whether all own exercises are listed, else the latest.</summary>
    public bool All { get; init; }
}
