using BenchmarkDotNet.Attributes;
using Passagework.Choosing.Discovery;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Instrument;
using Passagework.Repertoire;

namespace Passagework.Bench;

/// <summary>One cell measured in full and by table, and a whole search over cells of four notes.</summary>
[MemoryDiagnoser]
public class DiscoveryBenchmarks
{
    private static readonly int[] Cell = [0, 2, 1, 3, 2, 4];
    private DiscoveryQuestion _question = null!;
    private CellMeasurer _byTable = null!;
    private CellMeasurer _inFull = null!;

    [GlobalSetup]
    public void Prepare()
    {
        var player = Player.At(2);
        var music = PieceCollection.BuiltIn(player, Technique.Alternate).OrThrow();
        _question = new DiscoveryQuestion
        {
            Space = CellSpace.Usual(4),
            Player = player,
            Music = music,
        };
        var judge = new CellJudge(player, music);
        var space = CellSpace.Usual(Cell.Length) with { Layouts = [new Layout.Box(1, 5)] };
        _byTable = new CellVariant(space, 0, 0, judge).NewMeasurer();
        _inFull = new FullMeasurer(space, space.Layouts[0], Direction.Up, judge);
    }

    /// <summary>Six notes in box 1, both first strokes, three levels: the whole line planned.</summary>
    [Benchmark(Baseline = true)]
    public bool CellInFull() => _inFull.Measure(Cell);

    /// <summary>The same by table.</summary>
    [Benchmark]
    public bool CellByTable() => _byTable.Measure(Cell);

    /// <summary>6,860 candidates, one thread, tables and finds with them.</summary>
    [Benchmark]
    public DiscoveryResult WholeSearchOfFourNotes() => Discoverer.Find(_question).OrThrow();
}
