using Passagework.Foundation;

namespace Passagework.Rhythm;

/// <summary>How many onsets lie where no even division of the cycle falls.</summary>
/// <remarks>
/// G. Toussaint, 2005: the onsets whose pulse has no divisor in common with the number of pulses. Taken on the notated
/// grid; a coarser grid gives other values.
/// </remarks>
public static class OffBeatness
{
    /// <summary>The number of such onsets.</summary>
    public static int Of(OnsetPattern pattern) =>
        pattern.Onsets.Count(onset => WholeNumbers.Gcd(onset, pattern.Pulses) == 1);
}
