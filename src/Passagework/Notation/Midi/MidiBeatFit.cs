using System.Collections.Immutable;

namespace Passagework.Notation;

/// <summary>Chooses into how many equal parts a beat is divided, by the onsets in it. All figures are assumed by us.</summary>
internal static class MidiBeatFit
{
    private const double Looseness = 0.03;
    private const double Apart = 1.0 / 32;
    private const double Merging = 10;
    private const double Rarity = 4;
    private const double Known = 0.5;

    // The price of a division: simple and usual ones are cheap.
    private static readonly ImmutableArray<(int Parts, double Price)> Prices =
    [
        (1, 0),
        (2, 0.5),
        (4, 1.5),
        (3, 2),
        (6, 4),
        (8, 4),
        (5, 5),
        (7, 7),
        (12, 7),
        (16, 7),
        (9, 8),
        (10, 8),
    ];

    /// <summary>The divisions of all beats: first each on its own, then with what is usual in this file.</summary>
    /// <param name="beats">Places inside each beat, from 0 to below 1, ascending.</param>
    public static int[] Divide(IReadOnlyList<IReadOnlyList<double>> beats)
    {
        var alone = beats.Select(places => Cheapest(places, _ => 0)).ToList();
        var usual = alone.GroupBy(parts => parts).ToDictionary(group => group.Key, group => group.Count());
        double RarityOf(int parts) => Rarity * (1 - ((double)usual.GetValueOrDefault(parts) / alone.Count));
        return [.. beats.Select(places => Cheapest(places, RarityOf))];
    }

    /// <summary>The division for the end of a note, where the division of its beginning is preferred.</summary>
    public static int DivideFor(double place, int known)
    {
        var parts = Cheapest([place], _ => 0);
        return Misfit([place], known) + Known <= Misfit([place], parts) + PriceOf(parts) ? known : parts;
    }

    private static double PriceOf(int parts) => Prices.First(entry => entry.Parts == parts).Price;

    private static int Cheapest(IReadOnlyList<double> places, Func<int, double> rarity) =>
        Prices.MinBy(entry => entry.Price + rarity(entry.Parts) + Misfit(places, entry.Parts)).Parts;

    private static double Misfit(IReadOnlyList<double> places, int parts)
    {
        var sum = 0.0;
        for (var i = 0; i < places.Count; i++)
        {
            var nearest = Math.Round(places[i] * parts);
            var off = (places[i] - (nearest / parts)) / Looseness;
            sum += off * off;
            if (
                i > 0
                && places[i] - places[i - 1] > Apart
                && Math.Round(places[i - 1] * parts).Equals(nearest)
            )
            {
                sum += Merging;
            }
        }

        return sum;
    }
}
