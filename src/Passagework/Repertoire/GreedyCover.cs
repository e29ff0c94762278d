namespace Passagework.Repertoire;

/// <summary>A small number of sets that hold everything: always the one with most that is still open.</summary>
internal static class GreedyCover
{
    /// <summary>Indices of sets in the order taken; of equal ones the first. Sets of any number and size.</summary>
    public static List<int> Of(IReadOnlyList<HashSet<int>> sets)
    {
        var open = sets.SelectMany(set => set).ToHashSet();
        var taken = new List<int>();
        var gains = sets.Select(set => set.Count).ToArray();
        while (open.Count > 0)
        {
            var best = Best(sets, open, gains);
            taken.Add(best);
            open.ExceptWith(sets[best]);
        }

        return taken;
    }

    /// <summary>How many times more sets than the fewest it may take at most: 1 + 1/2 + … + 1/d, d the largest set.</summary>
    /// <remarks>Source: V. Chvátal, "A greedy heuristic for the set-covering problem", 1979.</remarks>
    public static double Factor(int largest) => Enumerable.Range(1, largest).Sum(i => 1.0 / i);

    // What a set still adds never grows, so one whose last known gain is no better needs no new count.
    private static int Best(IReadOnlyList<HashSet<int>> sets, HashSet<int> open, int[] gains)
    {
        var best = -1;
        for (var i = 0; i < sets.Count; i++)
        {
            if (best >= 0 && gains[i] <= gains[best])
            {
                continue;
            }

            gains[i] = sets[i].Count(open.Contains);
            best = best < 0 || gains[i] > gains[best] ? i : best;
        }

        return best;
    }
}
