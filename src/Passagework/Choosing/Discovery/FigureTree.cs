using Passagework.Foundation;
using Passagework.Repertoire;

namespace Passagework.Choosing.Discovery;

/// <summary>Figures in even rhythm that music holds, as a tree of intervals: each with what it adds to use in music.</summary>
/// <remarks>Only figures that occur have a node; whatever leaves the tree adds nothing.</remarks>
internal sealed class FigureTree
{
    /// <summary>The node before any interval.</summary>
    public const int Root = 0;

    /// <summary>Where the tree is left.</summary>
    public const int Outside = -1;

    private readonly List<int[]> _next = [];
    private readonly List<double> _terms = [];
    private readonly int _lowest;

    /// <summary>The figures of 3 to 6 notes of some music.</summary>
    /// <param name="figures">All that occur.</param>
    /// <param name="term">What each adds to use in music.</param>
    public FigureTree(IEnumerable<CellShape> figures, Func<CellShape, double> term)
    {
        var even = figures.Where(IsEven).ToList();
        var intervals = even.SelectMany(Intervals).DefaultIfEmpty().ToList();
        _lowest = intervals.Min();
        Width = intervals.Max() - _lowest + 1;
        NewNode();
        foreach (var figure in even)
        {
            var node = Intervals(figure).Aggregate(Root, Child);
            _terms[node] = term(figure);
        }

        Next = [.. _next.SelectMany(row => row)];
        Terms = [.. _terms];
    }

    /// <summary>Shape (nodes, <see cref="Width"/>): the node after a node and a number of <see cref="IntervalNumber"/>.</summary>
    public int[] Next { get; }

    /// <summary>What the figure that ends at a node adds.</summary>
    public double[] Terms { get; }

    /// <summary>Different intervals.</summary>
    public int Width { get; }

    /// <summary>The number of an interval; −1 for one that the music never makes.</summary>
    public int IntervalNumber(int semitones) =>
        semitones >= _lowest && semitones < _lowest + Width ? semitones - _lowest : Outside;

    private static bool IsEven(CellShape shape) =>
        Enumerable.Range(0, shape.Notes - 2).All(number => shape.Step(number) == RhythmStep.Even);

    private static IEnumerable<int> Intervals(CellShape shape) =>
        Enumerable.Range(0, shape.Notes - 1).Select(shape.Interval);

    private int Child(int node, int interval)
    {
        ref var next = ref _next[node][interval - _lowest];
        if (next == Outside)
        {
            next = NewNode();
        }

        return next;
    }

    private int NewNode()
    {
        var row = new int[Width];
        Array.Fill(row, Outside);
        _next.Add(row);
        _terms.Add(0);
        return _next.Count - 1;
    }
}
