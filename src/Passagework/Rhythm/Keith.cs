using System.Numerics;

namespace Passagework.Rhythm;

/// <summary>Hesitations, anticipations and syncopations by how a note starts and ends.</summary>
/// <remarks>
/// M. Keith, From Polychords to Pólya, 1991. With D the largest power of two not above a note's length, a start beside a
/// multiple of D counts 2 and an end beside one counts 1. Only for cycles of a power of two.
/// </remarks>
public static class Keith
{
    /// <summary>The sum over the notes; null where the cycle is no power of two.</summary>
    public static int? Sum(OnsetPattern pattern) => Total(pattern, startOff: 2, endOff: 1);

    /// <summary>Toussaint's reduced form, starts beside the beat only; null where the cycle is no power of two.</summary>
    public static int? Reduced(OnsetPattern pattern) => Total(pattern, startOff: 1, endOff: 0);

    private static int? Total(OnsetPattern pattern, int startOff, int endOff)
    {
        if (!BitOperations.IsPow2(pattern.Pulses))
        {
            return null;
        }

        var total = 0;
        var gaps = pattern.Gaps();
        for (var i = 0; i < gaps.Length; i++)
        {
            var unit = 1 << BitOperations.Log2((uint)gaps[i]);
            total += pattern.Onsets[i] % unit == 0 ? 0 : startOff;
            total += (pattern.Onsets[i] + gaps[i]) % unit == 0 ? 0 : endOff;
        }

        return total;
    }
}
