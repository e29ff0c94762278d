using Passagework.Hands;

namespace Passagework.Choosing.Discovery;

/// <summary>Goes through the strokes of a fingered line and puts the measures together.</summary>
internal sealed class StrokePass
{
    private readonly PathTables _tables;
    private readonly int[] _strings;
    private readonly double[][][] _raised;
    private readonly LoadWindow[] _windows;
    private readonly MoveTally _tally;

    public StrokePass(PathTables tables)
    {
        _tables = tables;
        _strings = Array.ConvertAll(tables.Path.Places, place => place.String - 1);
        _raised = Array.ConvertAll(tables.Strokes, RaisedOf);
        _windows = new LoadWindow[tables.Hands.Length];
        _tally = new MoveTally(tables.Moves);
    }

    /// <summary>The take with the first stroke of a table; use in music is left out.</summary>
    public CellTake Take(ReadOnlySpan<int> line, FretPass[] fretted, StrokeTable strokes)
    {
        var own = fretted[CellJudge.Own];
        var balance = Strike(line, own, strokes);
        var moves = line.Length - 1;
        Span<double> ceilings = stackalloc double[fretted.Length];
        for (var level = 0; level < fretted.Length; level++)
        {
            var heaviest = Math.Max(fretted[level].Heaviest, _windows[level].Largest);
            ceilings[level] = heaviest > 0 ? 1 / own.Hand.Pulse.Load(heaviest, moves) : double.NaN;
        }

        var fingers = CellFormulas.EffectiveFingers(own.Fingered);
        var least = ceilings[CellJudge.Own];
        var (rolls, stretch) = own.Shape(line, _tables.Path.Places);
        return new CellTake
        {
            EvenLoad = balance * Math.Min(1, fingers / _tables.ScaleFingers),
            GeneralUse = _tally.GeneralUse(moves, Measures.GeneralUse.LeastCount(least, line.Length)),
            StayingPower = CellFormulas.StayingPower(ceilings[0], ceilings[^1]),
            LeastCeiling = least,
            Rolls = rolls,
            Stretch = stretch,
        };
    }

    // Fills the windows of each level and the tally of moves; gives the balance of both hands.
    private double Strike(ReadOnlySpan<int> line, FretPass own, StrokeTable strokes)
    {
        var raised = _raised[Array.IndexOf(_tables.Strokes, strokes)];
        Array.Clear(_windows);
        _tally.Clear();
        var action = strokes.Start;
        var (less, more) = (0.0, 0.0);
        for (var k = 0; k + 1 < line.Length; k++)
        {
            var arc = StrokeTable.Arc(action, _strings[line[k]], _strings[line[k + 1]]);
            for (var level = 0; level < _windows.Length; level++)
            {
                _windows[level].Add(raised[level][arc]);
            }

            var (fretting, picking) = (own.Milliseconds[k], strokes.Milliseconds[CellJudge.Own][arc]);
            less += Math.Min(fretting, picking);
            more += Math.Max(fretting, picking);
            var next = strokes.Next[arc];
            _tally.Add(Move(line, own, k) + (action * 2) + next);
            action = next;
        }

        return more > 0 ? less / more : double.NaN;
    }

    private int Move(ReadOnlySpan<int> line, FretPass own, int k)
    {
        var pair = (line[k] * _tables.Path.Count) + line[k + 1];
        var (from, to) = (own.Hand.FingerOf[own.States[k]], own.Hand.FingerOf[own.States[k + 1]]);
        var fingers = (from * KnownMoves.Fingers) + to;
        return (pair * KnownMoves.PerPair) + (fingers * 4);
    }

    private double[][] RaisedOf(StrokeTable strokes) =>
        [
            .. strokes.Milliseconds.Select(
                (level, number) => Array.ConvertAll(level, _tables.Hands[number].Pulse.Raise)
            ),
        ];
}
