namespace Passagework.Engraving.Strips;

/// <summary>Where a strip stands under its system, in millimetres.</summary>
/// <param name="Middle">Height of the middle line.</param>
/// <param name="Half">Height of one hand's half.</param>
/// <param name="MmPerMs">How high a millisecond is.</param>
/// <param name="Space">One staff space.</param>
internal readonly record struct StripFrame(double Middle, double Half, double MmPerMs, double Space)
{
    private const double Slack = 0.01;

    /// <summary>Whether a time is no higher than its half.</summary>
    public bool Holds(double ms) => ms * MmPerMs <= Half + Slack;

    /// <summary>Height at which a time ends.</summary>
    public double At(Side side, double ms) => Middle + (side.Direction * ms * MmPerMs);
}
