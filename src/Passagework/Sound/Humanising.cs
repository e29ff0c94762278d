using System.Collections.Immutable;
using Passagework.Sound.Strings;

namespace Passagework.Sound;

/// <summary>Small irregularities of a hand, only when asked for; the same seed gives the same ones.</summary>
/// <remarks>Sizes are standard deviations, chosen by us to sound human and stay below what a listener would fault.</remarks>
public sealed record Humanising
{
    private const double Together = 0.005;
    private const double UsualPosition = 0.18;
    private const double MostDeviations = 2.4;

    /// <summary>Seconds by which strokes come early or late.</summary>
    public double Seconds { get; init; } = 0.006;

    /// <summary>By how much strengths differ.</summary>
    public double Strength { get; init; } = 0.05;

    /// <summary>By how much the place of the stroke wanders, as a share of the open string.</summary>
    public double Position { get; init; } = 0.012;

    /// <summary>
    /// The events with irregularities. The order on every string stays, and a note that ended where the next of its
    /// string begins still does.
    /// </summary>
    /// <param name="events">The events, in any order.</param>
    /// <param name="seed">Chooses the irregularities.</param>
    public ImmutableArray<StringEvent> Apply(ImmutableArray<StringEvent> events, ulong seed)
    {
        var lines = Lines(events);
        var shifts = Shifts(events, lines, seed);
        var endShifts = shifts.ToArray();
        foreach (var line in lines)
        {
            for (var k = 0; k + 1 < line.Length; k++)
            {
                var gap = events[line[k + 1]].Seconds - events[line[k]].EndSeconds;
                endShifts[line[k]] = Math.Abs(gap) < Together ? shifts[line[k + 1]] : shifts[line[k]];
            }
        }

        return
        [
            .. events.Select(
                (note, i) =>
                    Loosened(note, seed, i) with
                    {
                        Seconds = note.Seconds + shifts[i],
                        EndSeconds = note.EndSeconds + endShifts[i],
                    }
            ),
        ];
    }

    private StringEvent Loosened(StringEvent note, ulong seed, int index)
    {
        var strength = note.Strength + (Strength * Deviation(seed, index, 1));
        var position = (note.Position ?? UsualPosition) + (Position * Deviation(seed, index, 2));
        return note with
        {
            Strength = note.Strength > 0 ? Math.Clamp(strength, 0.05, 1) : 0,
            Position = Math.Clamp(position, 0.02, 0.5),
        };
    }

    private static int[][] Lines(ImmutableArray<StringEvent> events) =>
        [
            .. Enumerable
                .Range(0, events.Length)
                .GroupBy(i => events[i].String)
                .Select(line => line.OrderBy(i => events[i].Seconds).ToArray()),
        ];

    // No stroke moves by more than four tenths of the way to its neighbours on the string, so none overtakes another.
    private double[] Shifts(ImmutableArray<StringEvent> events, int[][] lines, ulong seed)
    {
        var shifts = new double[events.Length];
        for (var i = 0; i < events.Length; i++)
        {
            var shift = Seconds * Deviation(seed, i, 0);
            shifts[i] = Math.Max(shift, -events[i].Seconds);
        }

        foreach (var order in lines)
        {
            for (var k = 0; k + 1 < order.Length; k++)
            {
                var room = 0.4 * (events[order[k + 1]].Seconds - events[order[k]].Seconds);
                shifts[order[k]] = Math.Min(shifts[order[k]], room);
                shifts[order[k + 1]] = Math.Max(shifts[order[k + 1]], -room);
            }
        }

        return shifts;
    }

    // The sum of four even draws is close to a normal one and never strays far.
    private static double Deviation(ulong seed, int index, int kind)
    {
        var sum = 0.0;
        for (var draw = 0; draw < 4; draw++)
        {
            sum += Noise.At(seed, (((index * 3L) + kind) * 4) + draw);
        }

        return Math.Clamp(sum * Math.Sqrt(3) / 2, -MostDeviations, MostDeviations);
    }
}
