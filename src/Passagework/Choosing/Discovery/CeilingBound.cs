namespace Passagework.Choosing.Discovery;

/// <summary>How fast a line can be at most, from the first notes of its cell alone.</summary>
/// <remarks>
/// Wherever the line puts the cell, these moves stand side by side in one window of loads, and none asks less than the easiest
/// way of its hand to make it. The line puts the cell somewhere: the kindest place bounds it.
/// </remarks>
internal sealed class CeilingBound
{
    // So much above the bound that rounding removes nobody.
    private const double Slack = 1 + 1e-9;
    private readonly PathTables _tables;
    private readonly CellWalker _walker;
    private readonly double[] _fretting;
    private readonly double[] _picking;

    public CeilingBound(PathTables tables, CellWalker walker)
    {
        (_tables, _walker) = (tables, walker);
        var pairs = tables.Path.Count * tables.Path.Count;
        (_fretting, _picking) = (new double[pairs], new double[pairs]);
        for (var pair = 0; pair < pairs; pair++)
        {
            _fretting[pair] = EasiestFretting(pair);
            _picking[pair] = EasiestPicking(pair);
        }
    }

    /// <summary>Notes a second that no line whose cell begins so can pass.</summary>
    /// <param name="beginning">The first offsets of a cell, not wider than the path.</param>
    public double Of(ReadOnlySpan<int> beginning)
    {
        var (lowest, highest) = (0, 0);
        foreach (var offset in beginning)
        {
            lowest = Math.Min(lowest, offset);
            highest = Math.Max(highest, offset);
        }

        var kindest = double.PositiveInfinity;
        for (var start = -lowest; start + highest < _tables.Path.Length; start++)
        {
            kindest = Math.Min(kindest, Heaviest(start, beginning));
        }

        return kindest > 0 ? Slack / Hand.Pulse.Load(kindest, int.MaxValue) : double.PositiveInfinity;
    }

    private HandTable Hand => _tables.Hands[CellJudge.Own];

    private double Heaviest(int start, ReadOnlySpan<int> beginning)
    {
        var (fretting, picking) = (0.0, 0.0);
        for (var i = 1; i < beginning.Length; i++)
        {
            var (from, to) = (Place(start + beginning[i - 1]), Place(start + beginning[i]));
            fretting += _fretting[(from * _tables.Path.Count) + to];
            picking += _picking[(from * _tables.Path.Count) + to];
        }

        return Math.Max(fretting, picking);
    }

    private int Place(int index) =>
        _tables.Path.NumberAt[_walker.IsMirrored ? _tables.Path.Length - 1 - index : index];

    private double EasiestFretting(int pair)
    {
        var width = Hand.Width;
        var easiest = double.PositiveInfinity;
        for (var later = 0; later < width; later++)
        {
            for (var earlier = 0; earlier < width; earlier++)
            {
                var at = pair * width * width;
                var possible = Hand.Arcs.Costs[at + (later * width) + earlier] < double.PositiveInfinity;
                var load = Hand.Raised[at + (earlier * width) + later];
                easiest = possible ? Math.Min(easiest, load) : easiest;
            }
        }

        return easiest;
    }

    private double EasiestPicking(int pair)
    {
        var places = _tables.Path.Places;
        var (from, to) = (places[pair / places.Length].String - 1, places[pair % places.Length].String - 1);
        return _tables
            .Strokes.SelectMany(strokes =>
                Enumerable
                    .Range(0, 2)
                    .Select(action => strokes.Milliseconds[CellJudge.Own][StrokeTable.Arc(action, from, to)])
            )
            .Min(Hand.Pulse.Raise);
    }
}
