namespace Passagework.Studio.Features.Sound;

/// <summary>
/// How often bars are played one after another, so that a part of that can be heard again and again without an end: the
/// first time comes out of silence, the repeated ones follow, one more lets the last of them go on into a next.
/// </summary>
/// <param name="Repeated">Times through that are repeated together; 0 when nothing is.</param>
internal readonly record struct LoopShape(int Repeated)
{
    /// <summary>Longest repeated part whose chords come out even, in bars: the time map of longer ones would weigh more than
    /// the sound (chosen by us). Beyond it the chords begin anew with the repetition.</summary>
    private const int MostBars = 128;

    /// <summary>The drums vary in fours.</summary>
    private const int DrumBars = 4;

    /// <summary>All times through.</summary>
    public int Passes => Repeated == 0 ? 1 : Repeated + 2;

    /// <summary>The shape for a loop of bars.</summary>
    /// <param name="bars">Bars of one time through.</param>
    /// <param name="chordBars">Bars of the progression; null without a backing.</param>
    public static LoopShape Of(int bars, int? chordBars)
    {
        if (chordBars is not { } chords)
        {
            return new LoopShape(1);
        }

        var period = Common(chords, DrumBars);
        var even = Common(bars, period);
        return new LoopShape(even <= MostBars ? even / bars : (period + bars - 1) / bars);
    }

    private static int Common(int a, int b) => a / Divisor(a, b) * b;

    private static int Divisor(int a, int b) => b == 0 ? a : Divisor(b, a % b);
}
