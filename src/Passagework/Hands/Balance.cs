namespace Passagework.Hands;

/// <summary>How evenly two hands are loaded.</summary>
public static class Balance
{
    /// <summary>
    /// Σ min(l, r) / Σ max(l, r) over the transitions, 0 to 1; null when neither hand is asked anything. Hands that
    /// take turns being hard do not look balanced, as they would by their means.
    /// </summary>
    /// <param name="fretting">Demand of each transition, ms.</param>
    /// <param name="picking">Demand of each transition, ms; same length.</param>
    public static double? Of(ReadOnlySpan<double> fretting, ReadOnlySpan<double> picking)
    {
        var (less, more) = (0.0, 0.0);
        for (var i = 0; i < fretting.Length; i++)
        {
            less += Math.Min(fretting[i], picking[i]);
            more += Math.Max(fretting[i], picking[i]);
        }

        return more > 0 ? less / more : null;
    }
}
