using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Engraving.Sheets;

/// <summary>Takes whole bars out of what is played.</summary>
internal static class BarCut
{
    /// <summary>Number of bars, a begun one counted.</summary>
    public static int Count(Line line)
    {
        var bars = line.End / line.Recipe.Rhythm.Meter.Bar;
        return (int)(bars.IsWhole ? bars.Numerator : bars.Floor() + 1);
    }

    /// <summary>Bars from one, counted from 0, up to another that is left out; notes are cut at the last bar line.</summary>
    /// <remarks>Null where no note begins in these bars.</remarks>
    public static Realization? Take(Realization whole, int from, int to)
    {
        var line = whole.Line;
        var bar = line.Recipe.Rhythm.Meter.Bar;
        var (start, end) = (bar * Fraction.Of(from), bar * Fraction.Of(to));
        var notes = whole
            .Notes.Where(note => note.Note.Onset >= start && note.Note.Onset < end)
            .Select((note, index) => note with { Note = Moved(note.Note, index, start, end) })
            .ToImmutableArray();
        if (notes.IsEmpty)
        {
            return null;
        }

        var rests = line
            .Rests.Where(rest => rest.Onset < end && rest.Onset + rest.Duration > start)
            .Select(rest => Cut(rest, start, end));
        var stop = line.End < end ? line.End : end;
        return new Realization(
            line with
            {
                Recipe = from == 0 ? line.Recipe : WithoutStart(line.Recipe),
                Notes = [.. notes.Select(note => note.Note)],
                Rests = [.. rests],
                End = stop - start,
            },
            notes
        );
    }

    /// <summary>Index of the first note that begins in a bar or after it.</summary>
    public static int FirstNote(Line line, int from)
    {
        var start = line.Recipe.Rhythm.Meter.Bar * Fraction.Of(from);
        return line.Notes.FirstOrDefault(note => note.Onset >= start)?.Index ?? line.Notes.Length;
    }

    // What is cut out begins on a bar line, whatever the line itself began with.
    private static Recipe WithoutStart(Recipe recipe) =>
        recipe with
        {
            Rhythm = recipe.Rhythm with { StartOffset = Fraction.Zero },
        };

    private static LineNote Moved(LineNote note, int index, Fraction start, Fraction end) =>
        note with
        {
            Index = index,
            Onset = note.Onset - start,
            Duration = (note.End < end ? note.End : end) - note.Onset,
        };

    private static Rest Cut(Rest rest, Fraction start, Fraction end)
    {
        var (from, to) = (rest.Onset, rest.Onset + rest.Duration);
        from = from < start ? start : from;
        to = to > end ? end : to;
        return new Rest(from - start, to - from);
    }
}
