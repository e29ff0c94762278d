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
        var fingers = counts[1..];
        var (notes, entropy) = (0, 0.0);
        foreach (var count in fingers)
        {
            notes += count;
        }

        foreach (var count in fingers)
        {
            var share = (double)count / notes;
            entropy -= count > 0 ? share * Math.Log(share) : 0;
        }

        return Math.Exp(entropy);
    }
}
