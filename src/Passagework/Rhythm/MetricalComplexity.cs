namespace Passagework.Rhythm;

/// <summary>How far the onsets are from the strongest places they could have.</summary>
/// <remarks>
/// G. Toussaint, A mathematical analysis of African, Brazilian and Cuban clave rhythms, Bridges 2002: the largest sum of
/// weights that as many onsets can reach, less the sum that they have.
/// </remarks>
public static class MetricalComplexity
{
    /// <summary>The measure over the whole cycle; null where the cycle is no whole number of bars.</summary>
    public static int? Of(OnsetPattern pattern, MetricalTree bar)
    {
        if (pattern.Pulses % bar.Pulses != 0)
        {
            return null;
        }

        var bars = pattern.Pulses / bar.Pulses;
        var most = 0;
        var left = pattern.Onsets.Length;
        foreach (var weight in bar.Weights.OrderDescending())
        {
            var taken = Math.Min(left, bars);
            most += taken * weight;
            left -= taken;
        }

        return most - pattern.Onsets.Sum(onset => bar.Weights[onset % bar.Pulses]);
    }
}
