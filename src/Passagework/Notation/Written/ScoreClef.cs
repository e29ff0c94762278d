using Passagework.Instrument;

namespace Passagework.Notation;

/// <summary>Which clef a tuning is read in.</summary>
internal static class ScoreClef
{
    // Assumed: a first string below E3 (52) is a bass; the lowest guitar first strings lie far above.
    private const int LowestGuitarKey = 52;

    public static bool IsBass(Tuning tuning) => tuning.Open(1).Midi < LowestGuitarKey;
}
