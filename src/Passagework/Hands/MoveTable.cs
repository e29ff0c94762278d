using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>
/// The times of all moves between two layers for one player: the same as <see cref="FrettingMoves.Between"/>, with what
/// many moves share worked out once. Exhaustive search, which asks for single moves, holds the two together.
/// </summary>
internal sealed class MoveTable(FrettingMoves moves, double[] basis)
{
    private const double Unknown = -1;
    private const int Fingers = 5;
    private readonly double[] _actions = new double[Fingers * Fingers];
    private readonly ChordMoves _chords = new(moves, basis);
    private double[] _shifts = [];

    /// <summary>Shape (from, to), ms, infinity where no hand can make the move.</summary>
    /// <param name="from">States of the earlier layer.</param>
    /// <param name="to">States of the later layer.</param>
    /// <param name="reachOf">How the later of two places is reached.</param>
    public double[] Between(FretState[] from, FretState[] to, Func<Place, Place, Reach> reachOf)
    {
        var times = new double[from.Length * to.Length];
        if (from[0].Form is not null || to[0].Form is not null)
        {
            FillChords(times, from, to, reachOf);
            return times;
        }

        foreach (var start in Blocks(from))
        {
            foreach (var end in Blocks(to))
            {
                var reach = reachOf(from[start[0]].Place, to[end[0]].Place);
                Fill(times, from, to, new Block(start, end, reach));
            }
        }

        return times;
    }

    private void FillChords(
        double[] times,
        FretState[] from,
        FretState[] to,
        Func<Place, Place, Reach> reachOf
    )
    {
        for (var i = 0; i < from.Length; i++)
        {
            for (var j = 0; j < to.Length; j++)
            {
                var before = ChordMoves.ToneOn(from[i], to[j].Place.String).Place;
                var reach = to[j].Form is null ? reachOf(before, to[j].Place) : Reach.Struck;
                times[(i * to.Length) + j] =
                    _chords.Between(from[i], to[j], reach)?.At(basis) ?? double.PositiveInfinity;
            }
        }
    }

    // The states of each place: in nearly every layer there is only one place.
    private static List<int[]> Blocks(FretState[] states)
    {
        if (Array.TrueForAll(states, state => state.Place == states[0].Place))
        {
            return
            [
                [.. Enumerable.Range(0, states.Length)],
            ];
        }

        return
        [
            .. Enumerable
                .Range(0, states.Length)
                .GroupBy(i => states[i].Place)
                .Select(place => place.ToArray()),
        ];
    }

    private void Fill(double[] times, FretState[] from, FretState[] to, Block block)
    {
        var lowest = block.From.Min(i => from[i].Position);
        var nearest = block.To.Min(j => to[j].Position);
        var width = block.To.Max(j => to[j].Position) - nearest + 1;
        _shifts = new double[(block.From.Max(i => from[i].Position) - lowest + 1) * width];
        Array.Fill(_shifts, Unknown);
        Array.Fill(_actions, Unknown);
        foreach (var i in block.From)
        {
            foreach (var j in block.To)
            {
                var shift = ((from[i].Position - lowest) * width) + to[j].Position - nearest;
                times[(i * to.Length) + j] = Time(from[i], to[j], block.Reach, shift);
            }
        }
    }

    private double Time(FretState from, FretState to, Reach reach, int shift)
    {
        // An open string carries the hand over, and a slide hangs on posture: no two of them are alike.
        if (to.IsOpen || (reach is Reach.Slid or Reach.SlurredOrSlid && from.Finger == to.Finger))
        {
            return moves.Between(from, to, reach)?.At(basis) ?? double.PositiveInfinity;
        }

        ref var action = ref _actions[(from.Finger * Fingers) + to.Finger];
        if (action == Unknown)
        {
            action = moves.Action(from, to, reach)?.At(basis) ?? double.PositiveInfinity;
        }

        if (moves.Stretch(from, to) is not { } stretch)
        {
            return double.PositiveInfinity;
        }

        ref var moved = ref _shifts[shift];
        if (moved == Unknown)
        {
            moved = moves.Shift(from, to).At(basis);
        }

        return (action * stretch * FrettingMoves.Posture(to)) + moved;
    }

    // States of one place before states of one place, by their numbers in the layers.
    private readonly record struct Block(int[] From, int[] To, Reach Reach);
}
