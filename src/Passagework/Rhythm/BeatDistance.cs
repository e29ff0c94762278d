using Passagework.Foundation;

namespace Passagework.Rhythm;

/// <summary>Weighted note-to-beat distance: how near to a beat, yet beside it, the onsets are.</summary>
/// <remarks>
/// F. Gómez, A. Melvin, D. Rappaport and G. Toussaint, Mathematical measures of syncopation, Bridges 2005. A note beside
/// the beat counts 1/T, T its distance in beats from the nearer beat, and 2/T if it ends after the next beat and strictly
/// before the one after that (the published value 18/5 of the pattern soukous needs the strict reading). Notes last until
/// the next onset.
/// </remarks>
public static class BeatDistance
{
    /// <summary>The mean over the notes; 0 where all are on beats.</summary>
    /// <param name="pattern">Onsets; the cycle holds whole beats.</param>
    /// <param name="beatPulses">Pulses in a beat, at least 1.</param>
    public static Fraction Of(OnsetPattern pattern, int beatPulses)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(beatPulses, 1);
        var gaps = pattern.Gaps();
        var total = Fraction.Zero;
        for (var i = 0; i < gaps.Length; i++)
        {
            total += Distance(pattern.Onsets[i] % beatPulses, gaps[i], beatPulses);
        }

        return total / Fraction.Of(gaps.Length);
    }

    private static Fraction Distance(int inBeat, int length, int beat)
    {
        if (inBeat == 0)
        {
            return Fraction.Zero;
        }

        var end = inBeat + length;
        var crossesOneBeat = end > beat && end < 2 * beat;
        return Fraction.Of((crossesOneBeat ? 2 : 1) * beat, Math.Min(inBeat, beat - inBeat));
    }
}
