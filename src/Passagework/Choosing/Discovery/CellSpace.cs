using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Choosing.Discovery;

/// <summary>The exercises among which is searched: every cell of a length, on some layouts, in some directions, with some first strokes.</summary>
/// <remarks>
/// A cell begins at its own start (offset 0), and each note lies at most <see cref="Reach"/> path steps from the one before;
/// immediate repeats are allowed. Time runs in even pulses. Rotations of a cell are different exercises and are kept apart:
/// the accent falls on another note, the joins between cells differ, and so do the strokes at the joins.
/// </remarks>
public sealed record CellSpace
{
    /// <summary>Fewest notes of a cell.</summary>
    public const int Shortest = 3;

    /// <summary>Most notes of a cell.</summary>
    public const int Longest = 8;

    /// <summary>Root and scale.</summary>
    public required NoteSet Notes { get; init; }

    /// <summary>The instrument.</summary>
    public Fretboard Instrument { get; init; } = Fretboard.Standard;

    /// <summary>Where the notes may lie.</summary>
    public required ImmutableArray<Layout> Layouts { get; init; }

    /// <summary>Which ways the cells may go.</summary>
    public ImmutableArray<Direction> Directions { get; init; } = [Direction.Up, Direction.Down];

    /// <summary>The first strokes; those of a technique that knows no choice count once.</summary>
    public ImmutableArray<FirstStroke> Firsts { get; init; } = [FirstStroke.Down, FirstStroke.Up];

    /// <summary>How strokes follow one another; the first stroke stands in <see cref="Firsts"/>.</summary>
    public PickingPlan Picking { get; init; } = new();

    /// <summary>Notes of a cell, 3 to 8.</summary>
    public int Length { get; init; } = 5;

    /// <summary>Path steps between cells, 1 to 3.</summary>
    public int Step { get; init; } = 1;

    /// <summary>Path steps from a note to the next within a cell, at most.</summary>
    public int Reach { get; init; } = 3;

    /// <summary>Accented entries of the cell.</summary>
    public ImmutableArray<int> Accents { get; init; } = [0];

    /// <summary>Metre and notes a beat; straight, without a pattern.</summary>
    public RhythmPlan Rhythm { get; init; } = new();

    /// <summary>Cells of that length, playable or not: (2 reach + 1)^(length − 1).</summary>
    public long Cells => Below(1);

    /// <summary>All candidates: cells times layouts, directions and first strokes.</summary>
    public long Total => Cells * Layouts.Length * Directions.Length * StrokesTold.Length;

    /// <summary>The first strokes that make a difference.</summary>
    public ImmutableArray<FirstStroke> StrokesTold =>
        Picking.Technique is Technique.AllDown or Technique.AllUp or Technique.Fingers ? [Firsts[0]] : Firsts;

    /// <summary>A minor pentatonic, boxes 1 to 5 near fret 5, both first strokes, up and down, alternate picking.</summary>
    public static CellSpace Usual(int length) =>
        new()
        {
            Notes = NoteSet.TryNamed(NoteName.Of(5, 0), "minor pentatonic", out var set)
                ? set
                : throw new System.Diagnostics.UnreachableException(),
            Layouts = [.. Enumerable.Range(1, 5).Select(number => new Layout.Box(number, 5))],
            Length = length,
        };

    /// <summary>Cells that go on from a beginning of so many notes.</summary>
    public long Below(int notes)
    {
        var count = 1L;
        for (var i = notes; i < Length; i++)
        {
            count *= (2 * Reach) + 1;
        }

        return count;
    }

    /// <summary>The first value that is out of range; null when all are legal.</summary>
    public Fault? Check() =>
        Bounds.Within(Length, Shortest, Longest, "length")
        ?? Bounds.Within(Step, 1, 3, "step")
        ?? Bounds.Within(Reach, 1, 7, "reach")
        ?? (
            Layouts.IsEmpty || Directions.IsEmpty || Firsts.IsEmpty
                ? new Fault(
                    "nothing to search",
                    Right: "at least one layout, one direction and one first stroke"
                )
                : null
        )
        ?? (
            Rhythm.Swing.IsStraight && Rhythm.Pattern.IsEmpty
                ? null
                : new Fault("cells are searched in even pulses", "rhythm", "straight, without a pattern")
        );

    /// <summary>The recipe of a candidate.</summary>
    public Recipe RecipeOf(Layout layout, Direction direction, FirstStroke first, ReadOnlySpan<int> offsets)
    {
        var entries = ImmutableArray.CreateBuilder<int?>(offsets.Length);
        foreach (var offset in offsets)
        {
            entries.Add(offset);
        }

        return new Recipe
        {
            Notes = Notes,
            Instrument = Instrument,
            Layout = layout,
            Cell = new Cell { Offsets = entries.MoveToImmutable(), Accents = Accents },
            Movement = new Movement { Step = Step, Direction = direction },
            Rhythm = Rhythm,
            Picking = Picking with { First = first },
        };
    }

    /// <summary>The plain scale of a layout, which visits every place.</summary>
    internal Recipe PlainOf(Layout layout) =>
        (this with { Step = 1, Accents = [0] }).RecipeOf(layout, Direction.Up, Firsts[0], [0]);
}
