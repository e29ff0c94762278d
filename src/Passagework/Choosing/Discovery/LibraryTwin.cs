using Passagework.Exercises;
using Passagework.Instrument;

namespace Passagework.Choosing.Discovery;

/// <summary>Finds the exercise of the starting library that a find is, note for note, whatever its first stroke.</summary>
internal static class LibraryTwin
{
    /// <summary>Its id; null when there is none. Exercises in a box count in every layout.</summary>
    public static string? Of(Recipe found)
    {
        var line = LineBuilder.Build(found).OrThrow();
        return Library.All.FirstOrDefault(known => IsTwin(line, known.Recipe))?.Id;
    }

    private static bool IsTwin(Line line, Recipe known) =>
        (known.Layout is Layout.Box && Plays(line, InPlaceOf(known, line.Recipe))) || Plays(line, known);

    private static Recipe InPlaceOf(Recipe known, Recipe found) =>
        known with
        {
            Notes = found.Notes,
            Instrument = found.Instrument,
            Layout = found.Layout,
        };

    // Even pulses, the same places, every note struck.
    private static bool Plays(Line line, Recipe known) =>
        LineBuilder.Build(known).TryGet(out var other, out _)
        && other.Rests.IsEmpty
        && other.Notes.Select(note => note.Place).SequenceEqual(line.Notes.Select(note => note.Place))
        && other.Notes.All(note => note.Duration == other.Notes[0].Duration && note.Slur == Slur.None);
}
