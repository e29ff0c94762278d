namespace Passagework.Instrument;

/// <summary>Lays a note set over the strings in unbroken order, a set count of notes on each.</summary>
/// <remarks>
/// From string to string the pitch goes on to the next note of the set. Only where the next string is tuned lower
/// (a re-entrant tuning) the octave changes: the note is then taken at its place nearest to the fret at which the
/// string before began.
/// </remarks>
internal static class StringWalk
{
    /// <summary>Climbs from a spot to string 1; <paramref name="counts"/> repeats string by string.</summary>
    public static List<Spot> Climb(ScaleOnNeck scale, Spot from, ReadOnlySpan<int> counts)
    {
        var spots = new List<Spot>();
        var first = from;
        for (var index = 0; first.String >= 1; index++)
        {
            AddRun(scale, spots, first, counts[index % counts.Length]);
            if (first.String == 1)
            {
                break;
            }

            var next = scale.Neighbour(scale.Key(spots[^1]), 1);
            first = Settle(scale, first.String - 1, next, first);
        }

        return spots;
    }

    /// <summary>The strings below <paramref name="from"/>, in the same way downward; lowest string first.</summary>
    public static List<Spot> Descend(ScaleOnNeck scale, Spot from, int count)
    {
        var spots = new List<Spot>();
        var above = from;
        for (var number = from.String + 1; number <= scale.Strings; number++)
        {
            var key = scale.Key(above);
            for (var step = 0; step < count; step++)
            {
                key = scale.Neighbour(key, -1);
            }

            above = Settle(scale, number, key, above);
            var run = new List<Spot>();
            AddRun(scale, run, above, count);
            spots.InsertRange(0, run);
        }

        return spots;
    }

    private static void AddRun(ScaleOnNeck scale, List<Spot> spots, Spot first, int count)
    {
        var key = scale.Key(first);
        for (var note = 0; note < count; note++)
        {
            spots.Add(first with { Fret = key - scale.Open(first.String) });
            key = scale.Neighbour(key, 1);
        }
    }

    private static Spot Settle(ScaleOnNeck scale, int stringNumber, int key, Spot neighbour)
    {
        var fret = key - scale.Open(stringNumber);
        var rises = scale.Open(stringNumber).CompareTo(scale.Open(neighbour.String));
        var reentrant = rises * (neighbour.String - stringNumber) < 0;
        return new Spot(stringNumber, reentrant ? NearestOctave(fret, neighbour.Fret) : fret);
    }

    /// <summary>The lower of two places equally near: from 6 below (included) to 5 above the target.</summary>
    private static int NearestOctave(int fret, int target) =>
        target - 6 + Foundation.WholeNumbers.Modulo(fret - target + 6, 12);
}
