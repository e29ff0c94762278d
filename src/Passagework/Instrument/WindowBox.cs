namespace Passagework.Instrument;

/// <summary>A box of a set that has not five notes: what lies under four fingers, a finger to a fret.</summary>
/// <remarks>
/// Every string takes the notes in the window of four frets; a pitch that two strings have stays on the lower one. A
/// note between the lowest and the highest that would be lost is taken at its place nearest to the window, below it
/// rather than above where both are equally near.
/// </remarks>
internal static class WindowBox
{
    private const int Width = 4;

    /// <summary>The box whose window begins at a fret, in order of pitch.</summary>
    public static List<Spot> Lay(ScaleOnNeck scale, int firstFret)
    {
        var byKey = new SortedDictionary<int, Spot>();
        for (var number = scale.Strings; number >= 1; number--)
        {
            foreach (var spot in scale.Between(number, firstFret, firstFret + Width - 1))
            {
                byKey.TryAdd(scale.Key(spot), spot);
            }
        }

        var (lowest, highest) = (byKey.Keys.First(), byKey.Keys.Last());
        for (var key = lowest + 1; key < highest; key++)
        {
            if (scale.Contains(key) && !byKey.ContainsKey(key))
            {
                byKey[key] = Nearest(scale, key, firstFret);
            }
        }

        return [.. byKey.Values];
    }

    private static Spot Nearest(ScaleOnNeck scale, int key, int firstFret)
    {
        var lastFret = firstFret + Width - 1;
        return Enumerable
            .Range(1, scale.Strings)
            .Select(number => new Spot(number, key - scale.Open(number)))
            .Where(spot => spot.Fret >= 0)
            .MinBy(spot => spot.Fret < firstFret ? (firstFret - spot.Fret, 0) : (spot.Fret - lastFret, 1));
    }
}
