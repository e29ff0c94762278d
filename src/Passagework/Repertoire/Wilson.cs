namespace Passagework.Repertoire;

/// <summary>The Wilson interval of a share that was counted.</summary>
/// <remarks>Source: E. B. Wilson, "Probable inference, the law of succession, and statistical inference", JASA 22, 1927.</remarks>
/// <param name="Low">Lower bound, 0 to 1.</param>
/// <param name="High">Upper bound, 0 to 1.</param>
public readonly record struct Wilson(double Low, double High)
{
    /// <summary>z of 90 %, both sides.</summary>
    public const double Ninety = 1.645;

    /// <summary>The interval of a count among trials.</summary>
    /// <param name="count">0 to the trials.</param>
    /// <param name="trials">At least 1.</param>
    /// <param name="z">Quantile of the normal distribution.</param>
    public static Wilson Of(int count, int trials, double z = Ninety)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(trials, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(count, trials);
        var share = (double)count / trials;
        var slack = z * z / trials;
        var centre = share + (slack / 2);
        var reach = z * Math.Sqrt(((share * (1 - share)) + (slack / 4)) / trials);
        return new Wilson(
            Math.Max(0, (centre - reach) / (1 + slack)),
            Math.Min(1, (centre + reach) / (1 + slack))
        );
    }
}
