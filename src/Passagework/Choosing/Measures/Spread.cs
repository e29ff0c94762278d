using System.Collections.Immutable;

namespace Passagework.Choosing.Measures;

/// <summary>How far values lie apart.</summary>
internal static class Spread
{
    /// <summary>Standard deviation about their mean (over n); 0 for none.</summary>
    public static double Of(ImmutableArray<double> values)
    {
        if (values.IsEmpty)
        {
            return 0;
        }

        var mean = values.Average();
        return Math.Sqrt(values.Average(value => (value - mean) * (value - mean)));
    }
}
