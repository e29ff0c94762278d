namespace Passagework.Rhythm;

/// <summary>How varied the distances between onsets are.</summary>
public static class OnsetSpacing
{
    /// <summary>
    /// Normalized pairwise variability of successive gaps, in percent: 0 where all are equal. The gaps of one cycle in a
    /// row, the last to the next cycle included, no comparison around the end; null with fewer than two.
    /// </summary>
    /// <remarks>G. Toussaint, The Geometry of Musical Rhythm, 2013, ch. 17.</remarks>
    public static double? PairwiseVariability(OnsetPattern pattern)
    {
        var gaps = pattern.Gaps();
        return gaps.Length < 2
            ? null
            : 100
                * gaps.Zip(gaps.Skip(1), (a, b) => Math.Abs(a - b) / ((a + b) / 2.0)).Sum()
                / (gaps.Length - 1);
    }

    /// <summary>How many different distances there are between two onsets, the short way around the cycle.</summary>
    /// <remarks>G. Toussaint, The Geometry of Musical Rhythm, 2013.</remarks>
    public static int DistinctDistances(OnsetPattern pattern)
    {
        var distances =
            from low in pattern.Onsets
            from high in pattern.Onsets
            where low < high
            select Math.Min(high - low, pattern.Pulses - (high - low));
        return distances.Distinct().Count();
    }
}
