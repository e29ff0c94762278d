using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Rhythm;

namespace Passagework.Repertoire;

/// <summary>A place where a figure of an exercise stands in a piece.</summary>
/// <param name="Note">Index of its first note in the piece.</param>
/// <param name="Notes">How many notes it has.</param>
/// <param name="At">Where it begins.</param>
/// <param name="Transposed">Semitones from the exercise, where the figure first occurs there, to the piece.</param>
public sealed record Occurrence(int Note, int Notes, BarBeat At, int Transposed);

/// <summary>Finds the figures of an exercise in a piece, begun on any note.</summary>
public static class Occurrences
{
    /// <summary>
    /// Where the groups of an exercise stand in a piece: same intervals, same coarse rhythm. Groups of fewer than three notes are too
    /// short to be told from chance; an exercise that has no others is searched by its runs of six notes. Of
    /// a longer group than twelve notes the first twelve count. At most one, the longest, for each note of the piece.
    /// </summary>
    public static ImmutableArray<Occurrence> Of(Line exercise, Line piece)
    {
        var figures = FiguresOf(exercise);
        var lengths = figures.Keys.Select(shape => shape.Notes).Distinct().OrderDescending().ToList();
        var melody = new Melody(piece);
        var meter = piece.Recipe.Rhythm.Meter;
        return
        [
            .. Enumerable
                .Range(0, melody.Count)
                .Select(note => At(note, melody, lengths, figures))
                .OfType<(int Note, int Notes, int Key)>()
                .Select(found => new Occurrence(
                    found.Note,
                    found.Notes,
                    BarBeat.Of(piece.Notes[found.Note].Onset, meter),
                    melody.Key(found.Note) - found.Key
                )),
        ];
    }

    private static (int Note, int Notes, int Key)? At(
        int note,
        Melody melody,
        List<int> lengths,
        Dictionary<CellShape, int> figures
    )
    {
        foreach (var length in lengths.Where(length => melody.Holds(note, length)))
        {
            if (figures.TryGetValue(melody.Shape(note, length), out var key))
            {
                return (note, length, key);
            }
        }

        return null;
    }

    // Each figure with the key of its first note where it first occurs.
    private static Dictionary<CellShape, int> FiguresOf(Line exercise)
    {
        var melody = new Melody(exercise);
        var figures = new Dictionary<CellShape, int>();
        var groups = exercise
            .Notes.Where(note => note.Group is not null)
            .GroupBy(note => note.Group)
            .Select(group =>
                (Start: group.First().Index, Notes: Math.Min(group.Count(), CellShape.MostNotes))
            )
            .Where(group => group.Notes >= CellShape.FewestNotes && melody.Holds(group.Start, group.Notes))
            .ToList();
        var runs = Enumerable
            .Range(0, melody.Count)
            .Where(start => melody.Holds(start, Cells.Most))
            .Select(start => (Start: start, Notes: Cells.Most));
        foreach (var (start, notes) in groups.Count > 0 ? groups : runs)
        {
            figures.TryAdd(melody.Shape(start, notes), melody.Key(start));
        }

        return figures;
    }
}
