namespace Passagework.Choosing.Discovery;

/// <summary>What a find must not be; checked before anything is compared.</summary>
public sealed record DiscoveryFilters
{
    /// <summary>No roll: no finger that plays neighbouring strings at one fret in turn.</summary>
    public bool NoRolls { get; init; }

    /// <summary>Most frets from the lowest to the highest fretted note while the hand stays in one position; null for any.</summary>
    public int? MaxStretch { get; init; }

    /// <summary>Least top tempo at the student's level, notes a second; null for any.</summary>
    public double? MinCeiling { get; init; }
}
