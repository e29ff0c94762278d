namespace Passagework.Engraving.Scores;

/// <summary>Stems: which way and how long. Positions count half staff spaces above the middle line.</summary>
/// <remarks>
/// Common practice, as in E. Gould, Behind Bars, 2011; where handbooks leave a range the figures are chosen by us and
/// tested.
/// </remarks>
internal static class StemRules
{
    /// <summary>Usual length in staff spaces.</summary>
    public const double Usual = 3.5;

    private const double MorePerBeam = 0.75;
    private const double LeastInner = 2.5;
    private const double LeastUnderTwoBeams = 2.75;

    /// <summary>Whether the stem of a single note or chord points up: the note farthest from the middle decides, on the middle down.</summary>
    public static bool PointsUp(ReadOnlySpan<int> positions)
    {
        var (low, high) = Ends(positions);
        return -low > high;
    }

    /// <summary>Whether the stems of a beamed group point up: the farthest note decides, at equal distance the majority, else down.</summary>
    public static bool GroupPointsUp(ReadOnlySpan<int> positions)
    {
        var (low, high) = Ends(positions);
        if (-low != high)
        {
            return -low > high;
        }

        var (below, above) = (0, 0);
        foreach (var position in positions)
        {
            below += position < 0 ? 1 : 0;
            above += position > 0 ? 1 : 0;
        }

        return below > above;
    }

    /// <summary>Length from the note nearest the stem's end: 3.5 spaces, more for many beams, and always to the middle line.</summary>
    /// <param name="position">The note that is nearest the end of the stem.</param>
    /// <param name="up">Which way.</param>
    /// <param name="beams">Beams at its end; a flag needs no more than the usual, its glyph lengthens the stem.</param>
    public static double Length(int position, bool up, int beams)
    {
        var usual = Usual + (MorePerBeam * Math.Max(0, beams - 2));
        var toMiddle = (up ? -position : position) / 2.0;
        return Math.Max(usual, toMiddle);
    }

    /// <summary>Shortest stem inside a beamed group.</summary>
    public static double Least(int beams) =>
        beams < 2 ? LeastInner : LeastUnderTwoBeams + (MorePerBeam * (beams - 2));

    private static (int Low, int High) Ends(ReadOnlySpan<int> positions)
    {
        var (low, high) = (positions[0], positions[0]);
        foreach (var position in positions)
        {
            low = Math.Min(low, position);
            high = Math.Max(high, position);
        }

        return (low, high);
    }
}
