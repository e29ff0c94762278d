using System.Collections.Immutable;

namespace Passagework.Exercises.Ideas;

/// <summary>What kind of figure a cell is, as a teacher would say it.</summary>
internal enum FigureKind
{
    /// <summary>A single note.</summary>
    One,

    /// <summary>Notes with the same interval between each: neighbours, or with notes left out.</summary>
    Run,

    /// <summary>Neighbours out, then some of the way back.</summary>
    OutAndBack,

    /// <summary>Each note of a run several times.</summary>
    Repeated,

    /// <summary>Two notes in turn.</summary>
    Turns,

    /// <summary>One note in turn with each of the next ones.</summary>
    Pedal,

    /// <summary>Anything else.</summary>
    Free,
}

/// <summary>The shape of a cell.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Count">Notes of the run, or notes it goes out over, or partners of a pedal.</param>
/// <param name="Interval">Steps from note to note, negative against the direction; of the way out where it turns.</param>
/// <param name="Times">How often each note comes, or the pair; notes back where it turns.</param>
internal sealed record CellFigure(FigureKind Kind, int Count, int Interval, int Times)
{
    /// <summary>The figure of the notes of a cell; rests at its ends are left aside.</summary>
    public static CellFigure Of(ImmutableArray<int?> offsets)
    {
        var sounding = offsets.SkipWhile(offset => offset is null).ToList();
        sounding.RemoveRange(
            sounding.FindLastIndex(offset => offset is not null) + 1,
            sounding.Count - sounding.FindLastIndex(offset => offset is not null) - 1
        );
        if (sounding.Contains(null))
        {
            return Free(sounding.Count);
        }

        var notes = sounding.ConvertAll(offset => offset ?? 0);
        return notes.Count == 1
            ? new CellFigure(FigureKind.One, 1, 0, 1)
            : Run(notes)
                ?? OutAndBack(notes)
                ?? Turns(notes)
                ?? Repeated(notes)
                ?? Pedal(notes)
                ?? Free(notes.Count);
    }

    private static CellFigure Free(int count) => new(FigureKind.Free, count, 1, 1);

    private static CellFigure? Run(List<int> notes)
    {
        var interval = notes[1] - notes[0];
        return interval != 0 && Steps(notes).TrueForAll(step => step == interval)
            ? new CellFigure(FigureKind.Run, notes.Count, interval, 1)
            : null;
    }

    private static CellFigure? OutAndBack(List<int> notes)
    {
        var steps = Steps(notes);
        var way = steps[0];
        var outward = steps.FindIndex(step => step != way);
        return
            Math.Abs(way) == 1
            && outward > 0
            && steps.Skip(outward).All(step => step == -way)
            && outward >= steps.Count - outward
            ? new CellFigure(FigureKind.OutAndBack, outward + 1, way, steps.Count - outward)
            : null;
    }

    private static CellFigure? Turns(List<int> notes)
    {
        var pairs = notes.Count / 2;
        var same = notes.Count % 2 == 0 && notes[0] != notes[1];
        return pairs >= 2 && same && Enumerable.Range(0, notes.Count).All(i => notes[i] == notes[i % 2])
            ? new CellFigure(FigureKind.Turns, 2, notes[1] - notes[0], pairs)
            : null;
    }

    private static CellFigure? Repeated(List<int> notes)
    {
        var times = notes.TakeWhile(note => note == notes[0]).Count();
        if (times < 2 || notes.Count % times != 0)
        {
            return null;
        }

        var each = notes.Chunk(times).ToList();
        if (!each.TrueForAll(chunk => Array.TrueForAll(chunk, note => note == chunk[0])))
        {
            return null;
        }

        var run = each.ConvertAll(chunk => chunk[0]);
        var figure = run.Count == 1 ? new CellFigure(FigureKind.Run, 1, 0, 1) : Run(run);
        return figure is null ? null : figure with { Kind = FigureKind.Repeated, Times = times };
    }

    private static CellFigure? Pedal(List<int> notes)
    {
        var partners = notes.Where((_, i) => i % 2 == 1).ToList();
        var way = partners.Count < 2 ? 0 : partners[0] - notes[0];
        return
            notes.Count % 2 == 0
            && Math.Abs(way) == 1
            && notes.Where((_, i) => i % 2 == 0).All(note => note == notes[0])
            && Steps(partners).TrueForAll(step => step == way)
            ? new CellFigure(FigureKind.Pedal, partners.Count, way, 1)
            : null;
    }

    private static List<int> Steps(List<int> notes) => [.. notes.Zip(notes.Skip(1), (a, b) => b - a)];
}
