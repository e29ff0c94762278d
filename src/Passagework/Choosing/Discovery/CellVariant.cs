using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Choosing.Discovery;

/// <summary>One layout of a space in one direction; its cells differ only in themselves and in the first stroke.</summary>
internal sealed class CellVariant
{
    private readonly CellSpace _space;
    private readonly CellJudge _judge;
    private readonly PathTables? _tables;

    /// <summary>A variant; its tables are worked out at once.</summary>
    /// <param name="space">The space.</param>
    /// <param name="layout">Number of the layout.</param>
    /// <param name="direction">Number of the direction.</param>
    /// <param name="judge">For whom.</param>
    public CellVariant(CellSpace space, int layout, int direction, CellJudge judge)
        : this(space, layout, direction, judge, null) { }

    private CellVariant(CellSpace space, int layout, int direction, CellJudge judge, CellVariant? sister)
    {
        (_space, _judge) = (space, judge);
        (Layout, Direction) = (space.Layouts[layout], space.Directions[direction]);
        Path =
            sister?.Path
            ?? new PathPlaces(
                LayoutPlanner.Lay(Layout, space.Notes, space.Instrument).OrThrow(),
                space.Instrument
            );
        _tables = sister is null ? PathTables.Of(space, Path, Layout, judge) : sister._tables;
        Walker = new CellWalker(Path.Length, space.Step, Direction);
    }

    /// <summary>The layout.</summary>
    public Layout Layout { get; }

    /// <summary>The direction.</summary>
    public Direction Direction { get; }

    /// <summary>Its places.</summary>
    public PathPlaces Path { get; }

    /// <summary>Writes its lines.</summary>
    public CellWalker Walker { get; }

    /// <summary>All variants of a space, layout by layout; a fault names a layout that can't be laid.</summary>
    public static Outcome<CellVariant[]> AllOf(CellSpace space, CellJudge judge)
    {
        var variants = new List<CellVariant>();
        for (var layout = 0; layout < space.Layouts.Length; layout++)
        {
            if (
                !LayoutPlanner
                    .Lay(space.Layouts[layout], space.Notes, space.Instrument)
                    .TryGet(out _, out var fault)
            )
            {
                return fault;
            }

            CellVariant? sister = null;
            for (var direction = 0; direction < space.Directions.Length; direction++)
            {
                sister = new CellVariant(space, layout, direction, judge, sister);
                variants.Add(sister);
            }
        }

        return variants.ToArray();
    }

    /// <summary>A measurer for one thread.</summary>
    public CellMeasurer NewMeasurer() =>
        _tables is null
            ? new FullMeasurer(_space, Layout, Direction, _judge)
            : new TableMeasurer(_tables, _space, Direction);

    /// <summary>How fast lines can be at most; null where that is not known beforehand.</summary>
    public CeilingBound? NewBound() => _tables is null ? null : new CeilingBound(_tables, Walker);
}
