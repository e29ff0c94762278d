using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Tests.Notation;

/// <summary>Lines to be written as MIDI. A file holds no hands, so those are left out.</summary>
internal static class MidiLines
{
    public static Fraction Time(string text) =>
        Fraction.TryParse(text, out var time) ? time : throw new ArgumentException(text, nameof(text));

    /// <summary>What is played of a recipe, with any fingers.</summary>
    public static Realization Of(Recipe recipe) => Of(LineBuilder.Build(recipe).OrThrow());

    public static Realization Of(Line line) =>
        new(
            line,
            [
                .. line.Notes.Select(note => new PlayedNote(
                    note,
                    note.Place ?? line.Recipe.Instrument.PlacesOf(note.Midi).First(),
                    1,
                    1,
                    Stroke.Down
                )),
            ]
        );

    public static Recipe Exercise(string id) => Library.Find(id).OrThrow().Recipe;

    /// <summary>Key, onset and length of every note.</summary>
    public static ImmutableArray<string> Notes(Line line) =>
        [.. line.Notes.Select(note => $"{note.Midi} {note.Onset} {note.Duration}")];
}
