namespace Passagework.Choosing.Discovery;

/// <summary>Thins a front by the error of its measures: values that lie in one box can't be told apart.</summary>
/// <remarks>
/// Boxes floor(v/ε), only those that no other box beats, one candidate of each; after Laumanns, Thiele, Deb and Zitzler, "Combining
/// convergence and diversity in evolutionary multiobjective optimization", 2002 (from memory).
/// </remarks>
internal static class Thinning
{
    /// <summary>The candidates left, ascending.</summary>
    /// <param name="values">Values of each candidate.</param>
    /// <param name="errors">The error of each value; 0 where it is exact.</param>
    /// <param name="scores">Of each candidate: the best of a box stays, the first of equal ones.</param>
    public static List<int> Of(IReadOnlyList<double[]> values, double[] errors, IReadOnlyList<double> scores)
    {
        var boxes = values
            .Select((row, at) => (At: at, Box: BoxOf(row, errors)))
            .GroupBy(entry => entry.Box, BoxComparer.Instance)
            .Select(group => (group.Key, Best: group.MaxBy(entry => scores[entry.At]).At))
            .ToList();
        return
        [
            .. boxes
                .Where(box => !boxes.Exists(other => ParetoFront.Dominates(other.Key, box.Key)))
                .Select(box => box.Best)
                .Order(),
        ];
    }

    private static double[] BoxOf(double[] row, double[] errors) =>
        [.. row.Zip(errors, (value, error) => error > 0 ? Math.Floor(value / error) : value)];

    private sealed class BoxComparer : IEqualityComparer<double[]>
    {
        public static BoxComparer Instance { get; } = new();

        public bool Equals(double[]? x, double[]? y) => x.AsSpan().SequenceEqual(y);

        public int GetHashCode(double[] obj) => obj.Aggregate(0, HashCode.Combine);
    }
}
