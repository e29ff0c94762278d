namespace Passagework.Foundation;

/// <summary>For every state of every layer the best few rests of the way, filled from the last layer back.</summary>
internal sealed class RestTable
{
    private readonly LayeredProblem _problem;
    private readonly int _count;
    private readonly int[] _starts;
    private readonly double[] _costs;
    private readonly long[] _ties;
    private readonly int[] _next;

    public RestTable(LayeredProblem problem, int count)
    {
        _problem = problem;
        _count = count;
        var layers = problem.Steps.Count + 1;
        _starts = new int[layers + 1];
        for (var layer = 0; layer < layers; layer++)
        {
            _starts[layer + 1] = _starts[layer] + (StatesOf(layer) * count);
        }

        _costs = new double[_starts[layers]];
        _ties = new long[_starts[layers]];
        _next = new int[_starts[layers]];
        Array.Fill(_costs, double.PositiveInfinity);
        for (var slot = _starts[layers - 1]; slot < _starts[layers]; slot += count)
        {
            _costs[slot] = 0;
        }
    }

    /// <summary>Fills the layer before a step from the layer after it.</summary>
    public void Fill(int stepIndex, double limit)
    {
        var step = _problem.Steps[stepIndex];
        var weight = _problem.Weights[stepIndex];
        var extras = _problem.Extras[stepIndex];
        var (here, after) = (_starts[stepIndex], _starts[stepIndex + 1]);
        for (var i = 0; i < step.From; i++)
        {
            var row = i * step.To;
            var slot = here + (i * _count);
            for (var j = 0; j < step.To; j++)
            {
                var arc = weight * step.Costs[row + j];
                if (arc <= limit && arc < double.PositiveInfinity)
                {
                    Offer(slot, after + (j * _count), arc + extras[j], step.Ties[row + j]);
                }
            }
        }
    }

    /// <summary>The best ways from the first layer on.</summary>
    public IReadOnlyList<LayeredPath> ReadBest()
    {
        var heads = new List<(double Cost, long Tie, int Slot)>();
        for (var i = 0; i < _problem.StartCosts.Length; i++)
        {
            for (var rank = 0; rank < _count; rank++)
            {
                var slot = (i * _count) + rank;
                var cost = _problem.StartCosts[i] + _costs[slot];
                if (cost < double.PositiveInfinity)
                {
                    Insert(heads, (cost, _problem.StartTies[i] + _ties[slot], slot));
                }
            }
        }

        return heads.ConvertAll(head => new LayeredPath(Trace(head.Slot), head.Cost));
    }

    private static bool IsBetter(double cost, long tie, double thanCost, long thanTie) =>
        cost < thanCost - LayeredSolver.Tolerance
        || (cost <= thanCost + LayeredSolver.Tolerance && tie < thanTie);

    private int StatesOf(int layer) => layer == 0 ? _problem.StartCosts.Length : _problem.Steps[layer - 1].To;

    private void Offer(int slot, int from, double arc, long tie)
    {
        for (var rank = 0; rank < _count; rank++)
        {
            var cost = arc + _costs[from + rank];
            if (cost < double.PositiveInfinity)
            {
                Place(slot, cost, tie + _ties[from + rank], from + rank);
            }
        }
    }

    private void Place(int slot, double cost, long tie, int next)
    {
        var rank = _count - 1;
        if (!IsBetter(cost, tie, _costs[slot + rank], _ties[slot + rank]))
        {
            return;
        }

        while (rank > 0 && IsBetter(cost, tie, _costs[slot + rank - 1], _ties[slot + rank - 1]))
        {
            _costs[slot + rank] = _costs[slot + rank - 1];
            _ties[slot + rank] = _ties[slot + rank - 1];
            _next[slot + rank] = _next[slot + rank - 1];
            rank--;
        }

        _costs[slot + rank] = cost;
        _ties[slot + rank] = tie;
        _next[slot + rank] = next;
    }

    private void Insert(List<(double Cost, long Tie, int Slot)> heads, (double Cost, long Tie, int Slot) head)
    {
        var rank = heads.Count;
        while (rank > 0 && IsBetter(head.Cost, head.Tie, heads[rank - 1].Cost, heads[rank - 1].Tie))
        {
            rank--;
        }

        heads.Insert(rank, head);
        if (heads.Count > _count)
        {
            heads.RemoveAt(_count);
        }
    }

    private int[] Trace(int slot)
    {
        var states = new int[_starts.Length - 1];
        for (var layer = 0; layer < states.Length; layer++)
        {
            states[layer] = (slot - _starts[layer]) / _count;
            slot = _next[slot];
        }

        return states;
    }
}
