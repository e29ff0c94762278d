namespace Passagework.Foundation;

/// <summary>Finds the word that was probably meant.</summary>
public static class NearestWord
{
    private const int LeastBeginning = 3;

    /// <summary>
    /// The known word with the smallest edit distance (insertion, deletion, exchange of one letter, swap of two
    /// neighbours, ignoring case), a word of which the beginning was written counting as one change; null when the best needs more than a third of the letters changed.
    /// </summary>
    public static string? Find(string written, IEnumerable<string> known)
    {
        string? best = null;
        var least = int.MaxValue;
        foreach (var word in known)
        {
            var begun =
                written.Length >= LeastBeginning
                && word.StartsWith(written, StringComparison.OrdinalIgnoreCase);
            var distance = begun ? 1 : Distance(written, word);
            if (distance < least)
            {
                (best, least) = (word, distance);
            }
        }

        return best is not null && least * 3 <= Math.Max(written.Length, best.Length) + 1 ? best : null;
    }

    /// <summary>"did you mean 'x'?", or the list of what is allowed.</summary>
    public static string Hint(string written, IReadOnlyCollection<string> known) =>
        Find(written, known) is { } near ? $"did you mean '{near}'?" : $"one of: {string.Join(", ", known)}";

    private static int Distance(string written, string word)
    {
        // Very long input can't be near any word; this also bounds the work.
        if (written.Length > word.Length + 16)
        {
            return int.MaxValue / 4;
        }

        var a = written.ToLowerInvariant();
        var b = word.ToLowerInvariant();
        var table = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            for (var j = 0; j <= b.Length; j++)
            {
                table[i, j] = Cell(table, a, b, i, j);
            }
        }

        return table[a.Length, b.Length];
    }

    private static int Cell(int[,] table, string a, string b, int i, int j)
    {
        if (i == 0 || j == 0)
        {
            return i + j;
        }

        var change = table[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
        var least = Math.Min(change, Math.Min(table[i - 1, j], table[i, j - 1]) + 1);
        var swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
        return swapped ? Math.Min(least, table[i - 2, j - 2] + 1) : least;
    }
}
