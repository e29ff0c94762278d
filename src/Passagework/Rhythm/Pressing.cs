using Passagework.Foundation;

namespace Passagework.Rhythm;

/// <summary>Cognitive complexity of onsets in beats of four pulses; of the measures here the one nearest to how hard a
/// pattern is to play.</summary>
/// <remarks>
/// J. Pressing, Cognitive complexity and the structure of musical patterns, 1999 (rule names and costs from memory, five
/// of the sixteen values checked against a public table). Each beat is judged whole and by halves, on the coarsest grid
/// that keeps its onsets: nothing beside the first pulse 0, every place of the grid sounds 1, the first sounds but not
/// every one 2, the first is silent 5. A beat costs its own figure and the mean of its halves.
/// </remarks>
public static class Pressing
{
    private const int Filled = 1;
    private const int Run = 2;
    private const int Syncopated = 5;

    /// <summary>The sum over the beats of the cycle; null where it is no whole number of four pulses.</summary>
    public static Fraction? Of(OnsetPattern pattern)
    {
        if (pattern.Pulses % 4 != 0)
        {
            return null;
        }

        var total = Fraction.Zero;
        foreach (var beat in pattern.Onsets.GroupBy(onset => onset / 4, onset => onset % 4))
        {
            var sounds = new bool[4];
            foreach (var pulse in beat)
            {
                sounds[pulse] = true;
            }

            total += Fraction.Of((2 * Cost(sounds)) + Cost(sounds.AsSpan(..2)) + Cost(sounds.AsSpan(2..)), 2);
        }

        return total;
    }

    private static int Cost(ReadOnlySpan<bool> sounds)
    {
        var step = sounds.Length;
        while (!Keeps(sounds, step))
        {
            step /= 2;
        }

        if (step == sounds.Length)
        {
            return 0;
        }

        if (!sounds[0])
        {
            return Syncopated;
        }

        var places = sounds.Length / step;
        return sounds.Count(value: true) == places ? Filled : Run;
    }

    private static bool Keeps(ReadOnlySpan<bool> sounds, int step)
    {
        for (var pulse = 0; pulse < sounds.Length; pulse++)
        {
            if (sounds[pulse] && pulse % step != 0)
            {
                return false;
            }
        }

        return true;
    }
}
