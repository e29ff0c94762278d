using System.Collections.Immutable;

namespace Passagework.Hands;

/// <summary>Which hand, or their meeting, sets the pace.</summary>
public enum Limit
{
    /// <summary>The fretting hand.</summary>
    Fretting,

    /// <summary>The picking hand.</summary>
    Picking,

    /// <summary>The meeting of both hands.</summary>
    Together,
}

/// <summary>The fastest tempo that a player can hold, in notes a second: tempo × notes a beat ÷ 60.</summary>
/// <param name="Fretting">Of the fretting hand; null when nothing is asked of it.</param>
/// <param name="Picking">Of the picking hand; null when nothing is asked of it.</param>
/// <param name="Together">Of the hands' meeting; null when no finger has to meet a stroke.</param>
/// <param name="Range">How far the least could be off; null when no hand is asked anything.</param>
public sealed record Ceiling(double? Fretting, double? Picking, double? Together, CeilingRange? Range)
{
    /// <summary>Share of a ceiling up to which playing is relaxed (assumed; the level ladder scales with it).</summary>
    public static double RelaxedShare => HandConstants.RelaxedLoad;

    /// <summary>The smallest of the three; null when no hand is asked anything.</summary>
    public double? Least => new[] { Fretting, Picking, Together }.Min();

    /// <summary>The hand with the smallest ceiling; the first named of equal ones.</summary>
    public Limit? LimitedBy =>
        Least switch
        {
            null => null,
            var least when Fretting == least => Limit.Fretting,
            var least when Picking == least => Limit.Picking,
            _ => Limit.Together,
        };

    /// <summary>How much slower a passage of that length is than a burst (Heimhofer et al. 2024; time constant assumed).</summary>
    /// <param name="seconds">How long it is kept up.</param>
    /// <param name="load">The largest load; relaxed playing does not tire.</param>
    public static double DurationFactor(double seconds, double load = 1) =>
        load <= RelaxedShare
            ? 1
            : 1 - (HandConstants.FatigueShare * (1 - Math.Exp(-seconds / HandConstants.FatigueSeconds)));
}

/// <summary>How sure a ceiling is: the least ceiling over 200 joint draws of the parameters.</summary>
/// <param name="Low">10th percentile, notes a second.</param>
/// <param name="High">90th percentile, notes a second.</param>
/// <param name="FrettingShare">Share of the draws in which the fretting hand limits.</param>
/// <param name="PickingShare">Share in which the picking hand limits.</param>
/// <param name="TogetherShare">Share in which the hands' meeting limits.</param>
/// <param name="Draws">The least ceiling of each draw; the same place stands for the same hands in every exercise.</param>
public sealed record CeilingRange(
    double Low,
    double High,
    double FrettingShare,
    double PickingShare,
    double TogetherShare,
    ImmutableArray<double> Draws
)
{
    /// <summary>
    /// Share of the draws in which this exercise can be played faster than another by the same player: 0.5 where they
    /// are alike. What the two share cancels out, so it says more than two ranges that overlap.
    /// </summary>
    public double ShareFasterThan(CeilingRange other) =>
        Draws.Zip(other.Draws, (a, b) => (Math.Sign(a.CompareTo(b)) + 1) / 2.0).Average();

    /// <summary>The share of one limit.</summary>
    public double ShareOf(Limit limit) =>
        limit switch
        {
            Limit.Fretting => FrettingShare,
            Limit.Picking => PickingShare,
            _ => TogetherShare,
        };
}
