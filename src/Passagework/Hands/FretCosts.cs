using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>What the planner of fingerings pays for a move and for a way to fret a note, and what counts between equals.</summary>
internal sealed class FretCosts(FrettingMoves moves, double[] basis)
{
    private const long OneShift = 1L << 44;
    private const long OneFret = 1L << 28;
    private const double UnitsPerMs = 10;
    private readonly MoveTable _table = new(moves, basis);
    private readonly double _press = basis[Basis.Press];

    /// <summary>What a way to fret a note costs by itself.</summary>
    public static double Preference(FretState state) => HandConstants.DeviationWeight * state.Strain;

    /// <summary>Fewer shifts before less deviation before less effort of forms; wide enough for the longest line.</summary>
    public long TieOf(FretState state) =>
        (state.Strain * OneFret) + (long)((state.Form?.EffortMs(basis) ?? 0) * UnitsPerMs);

    /// <summary>The arcs between the states of two notes.</summary>
    public LayeredStep Between(FretState[] from, FretState[] to, Func<Place, Place, Reach> reachOf)
    {
        var costs = _table.Between(from, to, reachOf);
        var ties = new long[costs.Length];
        for (var i = 0; i < from.Length; i++)
        {
            for (var j = 0; j < to.Length; j++)
            {
                var arc = (i * to.Length) + j;
                costs[arc] = HandConstants.Cost(costs[arc] / _press);
                ties[arc] = (from[i].Position == to[j].Position ? 0 : OneShift) + TieOf(to[j]);
            }
        }

        return new LayeredStep(from.Length, to.Length, costs, ties);
    }
}
