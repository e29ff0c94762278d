using System.Collections.Immutable;

namespace Passagework.Engraving.Scores;

/// <summary>Something that stays on one line: a bar, or a part of one that is too wide for a line.</summary>
/// <param name="Natural">Its natural width.</param>
/// <param name="Least">Its width when pressed together as far as ink allows.</param>
/// <param name="Lead">What stands before it within a line, such as the room after a bar line; saved at the start of a line.</param>
/// <param name="BreakCost">What ending a line after it costs more.</param>
internal readonly record struct BreakUnit(double Natural, double Least, double Lead, double BreakCost)
{
    /// <summary>How much less of both widths it takes at the end of a line, where no further column follows.</summary>
    public (double Natural, double Least) Spared { get; init; }

    /// <summary>Its written time, in whole notes.</summary>
    public double Time { get; init; }
}

/// <summary>Where lines end: for the whole piece at once, by dynamic programming.</summary>
/// <remarks>
/// After Knuth and Plass, Breaking Paragraphs into Lines, 1981. State: units set so far. Cost of a line of natural width W
/// in room L: ((L − W) / W)², refused where L is below 0.8 W or below what ink needs. Recurrence: best(j) = min over i of
/// best(i) + cost(i, j) + break cost of j; of equal costs the earlier start wins, which fills the later lines. A last
/// line that is too short to be stretched costs nothing where short last lines are asked for.
/// </remarks>
internal static class SystemBreaks
{
    /// <summary>Most that a line is pressed together.</summary>
    public const double Pressed = 0.8;

    // A unit that its neighbours have made too wide for a line still stands alone, whatever that costs.
    private const double Overfull = 1e6;

    /// <summary>Times are sums of rounded fractions.</summary>
    public const double TimeSlack = 1e-9;

    /// <summary>A last line is stretched to the full width when its natural width is above this share.</summary>
    public const double JustifiedLast = 0.7;

    /// <summary>For every line the number of units up to its end, rising to all; with the cost.</summary>
    /// <param name="units">What is set; each fits a line of its own.</param>
    /// <param name="firstRoom">Room in the first line.</param>
    /// <param name="laterRoom">Room in the others.</param>
    /// <param name="shortLast">Whether a short last line costs nothing.</param>
    /// <param name="longest">Most time of a line of several units, in whole notes.</param>
    public static (ImmutableArray<int> Ends, double Cost) Choose(
        ReadOnlySpan<BreakUnit> units,
        double firstRoom,
        double laterRoom,
        bool shortLast = false,
        double longest = double.PositiveInfinity
    )
    {
        var best = new double[units.Length + 1];
        var from = new int[units.Length + 1];
        Array.Fill(best, double.PositiveInfinity);
        best[0] = 0;
        for (var start = 0; start < units.Length; start++)
        {
            var room = start == 0 ? firstRoom : laterRoom;
            var (natural, least) = (-units[start].Lead, -units[start].Lead);
            var time = 0.0;
            for (var end = start + 1; end <= units.Length && Fits(natural, least, room); end++)
            {
                var last = units[end - 1];
                time += last.Time;
                if (end > start + 1 && time > longest + TimeSlack)
                {
                    break;
                }

                natural += last.Lead + last.Natural;
                least += last.Lead + last.Least;
                var breakCost = end < units.Length ? last.BreakCost : 0;
                var (width, ink) = (natural - last.Spared.Natural, least - last.Spared.Least);
                var isShort = shortLast && end == units.Length && width <= JustifiedLast * room;
                var alone = end == start + 1 ? Overfull : double.PositiveInfinity;
                var cost = best[start] + (isShort ? 0 : Math.Min(alone, Cost(width, ink, room))) + breakCost;
                if (cost < best[end])
                {
                    (best[end], from[end]) = (cost, start);
                }
            }
        }

        return (Ends(from), best[^1]);
    }

    /// <summary>Whether a line holds that width.</summary>
    public static bool Fits(double natural, double least, double room) =>
        room >= Pressed * natural && room >= least;

    private static double Cost(double natural, double least, double room) =>
        Fits(natural, least, room) ? Math.Pow((room - natural) / natural, 2) : double.PositiveInfinity;

    private static ImmutableArray<int> Ends(int[] from)
    {
        var ends = new Stack<int>();
        for (var end = from.Length - 1; end > 0; end = from[end])
        {
            ends.Push(end);
        }

        return [.. ends];
    }
}
