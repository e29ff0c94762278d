using Passagework.Exercises;
using Passagework.Repertoire;

namespace Passagework.Choosing.Discovery;

/// <summary>
/// Measures cells by table: equal to the full measurement within rounding, without allocation. Not for two threads at once.
/// </summary>
/// <remarks>
/// The fretting hand knows nothing of strokes, so one fingering for each level serves every first stroke. Tables let the hand stand
/// wherever some place of the path needs it while an open string sounds, the full measurement only where some note of the line
/// does. That changes nothing: after a fretted note the hand stands where that put it, and before the first one no other position
/// is better than the one which that note needs.
/// </remarks>
internal sealed class TableMeasurer : CellMeasurer
{
    private readonly PathTables _tables;
    private readonly CellWalker _walker;
    private readonly FretChain _chain;
    private readonly FretPass[] _fretted;
    private readonly StrokePass _strokes;
    private readonly int[] _indices;
    private readonly int[] _places;

    public TableMeasurer(PathTables tables, CellSpace space, Direction direction)
    {
        _tables = tables;
        _walker = new CellWalker(tables.Path.Length, space.Step, direction);
        var most = _walker.MostNotes(space.Length);
        _indices = new int[most];
        _places = new int[most];
        _chain = new FretChain(most, tables.Hands.Max(hand => hand.Width));
        _fretted = Array.ConvertAll(tables.Hands, hand => new FretPass(hand, most));
        _strokes = new StrokePass(tables);
        Takes = new CellTake[tables.Strokes.Length];
    }

    public override CellTake[] Takes { get; }

    public override bool Measure(ReadOnlySpan<int> offsets)
    {
        var count = _walker.Write(offsets, _indices);
        var line = _places.AsSpan(0, count);
        for (var note = 0; note < count; note++)
        {
            line[note] = _tables.Path.NumberAt[_indices[note]];
        }

        foreach (var fretted in _fretted)
        {
            if (!_chain.Solve(fretted.Hand.Arcs, line, fretted.States))
            {
                return false;
            }

            fretted.Read(line);
        }

        var use = UseInMusic(line);
        for (var first = 0; first < Takes.Length; first++)
        {
            Takes[first] = _strokes.Take(line, _fretted, _tables.Strokes[first]) with { UseInMusic = use };
        }

        return true;
    }

    private double UseInMusic(ReadOnlySpan<int> line)
    {
        var windows = 0;
        for (var notes = Cells.Fewest; notes <= Cells.Most; notes++)
        {
            windows += Math.Max(0, line.Length - notes + 1);
        }

        if (!_tables.HasMusic || windows == 0)
        {
            return double.NaN;
        }

        var sum = 0.0;
        for (var start = 0; start + Cells.Fewest <= line.Length; start++)
        {
            sum += From(line[start..Math.Min(line.Length, start + Cells.Most)]);
        }

        return sum / windows;
    }

    private double From(ReadOnlySpan<int> notes)
    {
        var (sum, node, places) = (0.0, FigureTree.Root, _tables.Path.Count);
        for (var i = 1; i < notes.Length; i++)
        {
            var interval = _tables.Intervals[(notes[i - 1] * places) + notes[i]];
            node =
                interval < 0
                    ? FigureTree.Outside
                    : _tables.Figures.Next[(node * _tables.Figures.Width) + interval];
            if (node < 0)
            {
                break;
            }

            sum += _tables.Figures.Terms[node];
        }

        return sum;
    }
}
