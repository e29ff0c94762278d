using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Rhythm;

/// <summary>How little the accents give away where the beat is.</summary>
internal static class Ambiguity
{
    /// <summary>The ways of dividing a beat that are tried.</summary>
    public static ImmutableArray<int> Divisions { get; } = [2, 3, 4, 6];

    /// <summary>
    /// The share of the places of the beat that accents visit until all repeats, as a mean over 2, 3, 4 and 6 notes a
    /// beat. Chosen by us.
    /// </summary>
    public static Fraction Of(Pass accents) =>
        Divisions.Aggregate(
            Fraction.Zero,
            (sum, places) => sum + Fraction.Of(accents.PlacesVisited(places), places * Divisions.Length)
        );
}
