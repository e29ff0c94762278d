using Passagework.Hands;

namespace Passagework.Choosing.Discovery;

/// <summary>The formulas of the measures, from what was counted.</summary>
internal static class CellFormulas
{
    /// <summary>Staying power from the least ceilings at the first and the last level; NaN where either is missing.</summary>
    public static double StayingPower(double first, double last) =>
        double.IsNaN(first) || double.IsNaN(last) ? double.NaN : Measures.StayingPower.Of(first, last);

    /// <summary>e to the entropy of the shares of the fingers, open strings (the first count) left out; 1 when nothing is fretted.</summary>
    public static double EffectiveFingers(ReadOnlySpan<int> counts)
    {
        var notes = 0;
        foreach (var count in counts[1..])
        {
            notes += count;
        }

        Span<double> shares = stackalloc double[counts.Length - 1];
        for (var finger = 0; finger < shares.Length && notes > 0; finger++)
        {
            shares[finger] = (double)counts[finger + 1] / notes;
        }

        return FrettingCounts.EffectiveOf(shares);
    }
}
