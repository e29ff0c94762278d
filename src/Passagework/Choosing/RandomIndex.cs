using System.Collections.Immutable;

namespace Passagework.Choosing;

/// <summary>The mean consistency index of random comparisons, by number of things; its name goes with any ratio.</summary>
internal sealed class RandomIndex
{
    private const int First = 3;
    private readonly ImmutableArray<double> _values;

    private RandomIndex(string name, ImmutableArray<double> values)
    {
        Name = name;
        _values = values;
    }

    /// <summary>T. L. Saaty, "The Analytic Hierarchy Process", 1980; 10 % high for three things.</summary>
    public static RandomIndex Saaty { get; } =
        new("Saaty 1980", [0.58, 0.90, 1.12, 1.24, 1.32, 1.41, 1.45, 1.49]);

    /// <summary>
    /// J. A. Alonso and M. T. Lamata, "Consistency in the analytic hierarchy process: a new approach", International
    /// Journal of Uncertainty, Fuzziness and Knowledge-Based Systems 14(4), 2006.
    /// </summary>
    public static RandomIndex AlonsoLamata { get; } =
        new(
            "Alonso and Lamata 2006",
            [
                0.5247,
                0.8816,
                1.1086,
                1.2479,
                1.3417,
                1.4057,
                1.4499,
                1.4854,
                1.5140,
                1.5365,
                1.5551,
                1.5713,
                1.5838,
            ]
        );

    /// <summary>Who published it.</summary>
    public string Name { get; }

    /// <summary>The index for so many things; null where there is none.</summary>
    public double? Of(int count) =>
        count >= First && count - First < _values.Length ? _values[count - First] : null;
}
