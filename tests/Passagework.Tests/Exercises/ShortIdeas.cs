using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Tests.Instrument;

namespace Passagework.Tests.Exercises;

/// <summary>Recipes in short, and lines as short texts.</summary>
internal static class ShortIdeas
{
    /// <summary>A path of that many notes along string 1, so that a fret is a path index.</summary>
    public static Layout Steps(int count) =>
        new Layout.Given([.. Enumerable.Range(0, count).Select(fret => Place.At(1, fret))]);

    /// <summary>A cell on a path where fret and path index are the same; the root C is at fret 8.</summary>
    public static Recipe OnSteps(int count, params int?[] offsets) =>
        new()
        {
            Notes = Necks.Notes("C", "chromatic"),
            Layout = Steps(count),
            Cell = new Cell { Offsets = [.. offsets] },
        };

    public static Recipe Box1(params int?[] offsets) =>
        new()
        {
            Notes = Necks.Notes("A", "minor pentatonic"),
            Layout = new Layout.Box(1, 5),
            Cell = new Cell { Offsets = [.. offsets] },
        };

    public static Line Line(Recipe recipe) => LineBuilder.Build(recipe).OrThrow();

    public static Fault Refuse(Recipe recipe) =>
        LineBuilder.Build(recipe).TryGet(out var line, out var fault)
            ? throw new InvalidOperationException($"built {line.Notes.Length} notes")
            : fault;

    /// <summary>Frets, with a bar between groups and a + before notes added by an ending.</summary>
    public static string Frets(Line line) => Text(line, note => $"{note.Place?.Fret}");

    /// <summary>Places, with a bar between groups and ~ after notes reached without a stroke.</summary>
    public static string Places(Line line) =>
        Text(line, note => note.Slur == Slur.None ? $"{note.Place}" : $"{note.Place}~");

    /// <summary>Notes as onset+duration, rests in brackets, in order of time.</summary>
    public static string Times(Line line)
    {
        var notes = line.Notes.Select(note => (note.Onset, Text: $"{note.Onset}+{note.Duration}"));
        var rests = line.Rests.Select(rest => (rest.Onset, Text: $"[{rest.Onset}+{rest.Duration}]"));
        return string.Join(
            ' ',
            notes.Concat(rests).OrderBy(entry => entry.Onset).Select(entry => entry.Text)
        );
    }

    private static string Text(Line line, Func<LineNote, string> write)
    {
        var groups = line
            .Notes.GroupBy(note => note.Group ?? int.MaxValue)
            .Select(group => (group.Key == int.MaxValue ? "+ " : "") + string.Join(' ', group.Select(write)));
        return string.Join(" | ", groups);
    }
}
