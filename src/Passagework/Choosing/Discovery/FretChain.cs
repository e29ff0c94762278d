using System.Numerics;
using System.Runtime.Intrinsics;
using Passagework.Foundation;

namespace Passagework.Choosing.Discovery;

/// <summary>
/// The best fingering of a line by table: the same ways, costs and ties as <see cref="LayeredSolver"/>, four earlier states
/// at a time, and no memory but its own.
/// </summary>
/// <remarks>
/// For each earlier state the cheapest later one is kept beside the second cheapest. Where the two lie more than twice the
/// solver's tolerance apart, the order of comparison can't matter; where not, that state is worked out in the solver's order.
/// </remarks>
internal sealed class FretChain(int mostNotes, int width)
{
    private const double Near = 2.5 * LayeredSolver.Tolerance;
    private readonly double[] _next = new double[mostNotes * width];
    private double[] _costs = new double[width];
    private double[] _later = new double[width];
    private long[] _ties = new long[width];
    private long[] _laterTies = new long[width];

    /// <summary>The chosen state of each note, as number in its place; false when no hand can play the line.</summary>
    /// <param name="table">The states and arcs.</param>
    /// <param name="places">The line as numbers of places.</param>
    /// <param name="states">Receives place × width + number.</param>
    public bool Solve(FretArcs table, ReadOnlySpan<int> places, Span<int> states)
    {
        Array.Clear(_costs);
        Array.Clear(_ties);
        for (var note = places.Length - 2; note >= 0; note--)
        {
            (_costs, _later) = (_later, _costs);
            (_ties, _laterTies) = (_laterTies, _ties);
            var pair = table.Between(places[note], places[note + 1]);
            Fill(table, pair, (table.Counts[places[note]], table.Counts[places[note + 1]]), note);
        }

        var state = First(table, places[0]);
        if (state < 0)
        {
            return false;
        }

        for (var note = 0; note < places.Length; note++)
        {
            states[note] = (places[note] * table.Width) + state;
            state = note + 1 < places.Length ? (int)_next[(note * table.Width) + state] : 0;
        }

        return true;
    }

    private static bool IsBetter(double cost, long tie, double thanCost, long thanTie) =>
        cost < thanCost - LayeredSolver.Tolerance
        || (cost <= thanCost + LayeredSolver.Tolerance && tie < thanTie);

    private int First(FretArcs table, int place)
    {
        var (best, bestCost, bestTie) = (-1, 0.0, 0L);
        for (var i = 0; i < table.Counts[place]; i++)
        {
            var cost = table.StartCosts[(place * table.Width) + i] + _costs[i];
            var tie = table.StartTies[(place * table.Width) + i] + _ties[i];
            if (cost < double.PositiveInfinity && (best < 0 || IsBetter(cost, tie, bestCost, bestTie)))
            {
                (best, bestCost, bestTie) = (i, cost, tie);
            }
        }

        return best;
    }

    private void Fill(FretArcs table, int pair, (int Earlier, int Later) counts, int note)
    {
        for (var lane = 0; lane < counts.Earlier; lane += FretArcs.Lane)
        {
            var best = Vector256.Create(double.PositiveInfinity);
            var second = best;
            var chosen = Vector256<double>.Zero;
            var ties = Vector256<long>.Zero;
            for (var j = 0; j < counts.Later; j++)
            {
                var arc = pair + (j * table.Width) + lane;
                var cost = Vector256.Create(table.Costs.AsSpan(arc)) + Vector256.Create(_later[j]);
                var tie = Vector256.Create(table.Ties.AsSpan(arc)) + Vector256.Create(_laterTies[j]);
                var less = Vector256.LessThan(cost, best);
                second = Vector256.Min(second, Vector256.Max(cost, best));
                best = Vector256.ConditionalSelect(less, cost, best);
                chosen = Vector256.ConditionalSelect(less, Vector256.Create((double)j), chosen);
                ties = Vector256.ConditionalSelect(less.AsInt64(), tie, ties);
            }

            best.CopyTo(_costs.AsSpan(lane));
            ties.CopyTo(_ties.AsSpan(lane));
            chosen.CopyTo(_next.AsSpan((note * table.Width) + lane));
            var near =
                Vector256.LessThanOrEqual(second, best + Vector256.Create(Near))
                & Vector256.LessThan(best, Vector256.Create(double.PositiveInfinity));
            for (var bits = near.ExtractMostSignificantBits(); bits != 0; bits &= bits - 1)
            {
                InOrder(table, pair, lane + BitOperations.TrailingZeroCount(bits), (counts.Later, note));
            }
        }
    }

    private void InOrder(FretArcs table, int pair, int i, (int Later, int Note) at)
    {
        var (best, bestTie, chosen) = (double.PositiveInfinity, 0L, 0);
        for (var j = 0; j < at.Later; j++)
        {
            var arc = pair + (j * table.Width) + i;
            var cost = table.Costs[arc] + _later[j];
            var tie = table.Ties[arc] + _laterTies[j];
            if (cost < double.PositiveInfinity && IsBetter(cost, tie, best, bestTie))
            {
                (best, bestTie, chosen) = (cost, tie, j);
            }
        }

        (_costs[i], _ties[i]) = (best, bestTie);
        _next[(at.Note * table.Width) + i] = chosen;
    }
}
