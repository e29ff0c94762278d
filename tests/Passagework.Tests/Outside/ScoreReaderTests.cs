using System.Text.Json;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Instrument;
using Passagework.Notation;
using Passagework.Tests.Notation;
using Path = System.IO.Path;

namespace Passagework.Tests.Outside;

/// <summary>
/// Our MusicXML counted by an independent reader (npm package "musicxml-io", pinned) and heard by another ("musicvis-lib").
/// </summary>
public sealed class ScoreReaderTests
{
    [Fact]
    public void Our_scores_have_the_bars_notes_strings_and_frets_that_were_played()
    {
        var played = Library.All.Select(exercise => Realized(exercise.Recipe)).ToArray();

        var seen = Ask("scores.mjs", "musicxml-io", played.Select(line => MusicXml.Write(line).OrThrow()));

        Assert.Equal(played.Length, seen.Length);
        foreach (var (line, parts) in played.Zip(seen))
        {
            var part = Assert.Single(parts.EnumerateArray());
            var strings = Numbers(part, "strings");
            var frets = Numbers(part, "frets");
            // Every note stands on both staves; one that is tied on has a head for each part.
            Assert.Equal(2 * strings.Count, part.GetProperty("notes").GetInt32());
            Assert.Equal(BarsOf(line.Line), part.GetProperty("bars").GetInt32());
            Assert.Equal(
                line.Notes.Select(note => note.Place.ToString()).ToList(),
                Untied(line, strings.Zip(frets).Select(place => $"{place.First}:{place.Second}").ToList())
            );
        }
    }

    [Fact]
    public void Our_scores_sound_to_another_reader_as_they_were_played()
    {
        var played = Library.All.Select(exercise => Realized(exercise.Recipe)).ToArray();

        var heard = Ask("played.mjs", "musicvis-lib", played.Select(line => MusicXml.Write(line).OrThrow()));

        Assert.Equal(played.Length, heard.Length);
        foreach (var (line, parts) in played.Zip(heard))
        {
            var part = Assert.Single(parts.EnumerateArray());
            Assert.Equal(BarsOf(line.Line), part.GetProperty("bars").GetInt32());
            // It reads the tab alone, and tied heads as one note.
            Assert.Equal(
                line.Notes.Select(note => $"key {note.Note.Midi} at {note.Place}"),
                HeardNote.Of(part).Select(note => $"key {note.Midi} at {note.Place}")
            );
        }
    }

    private static JsonElement[] Ask(string script, string package, IEnumerable<string> scores) =>
        [.. NodeScript.Ask(script, package, JsonSerializer.Serialize(scores)).RootElement.EnumerateArray()];

    private static List<int> Numbers(JsonElement part, string name) =>
        [.. part.GetProperty(name).EnumerateArray().Select(number => number.GetInt32())];

    private static int BarsOf(Line line)
    {
        var bars = line.End / line.Recipe.Rhythm.Meter.Bar;
        return (int)bars.Floor() + (bars.IsWhole ? 0 : 1);
    }

    // Heads of tied parts repeat the place: what is left after the note itself goes to the same place.
    private static List<string> Untied(Realization line, List<string> places)
    {
        var kept = new List<string>();
        var at = 0;
        foreach (var note in line.Notes)
        {
            var place = note.Place.ToString();
            kept.Add(at < places.Count ? places[at] : "missing");
            at++;
            var repeats =
                note.Note.Index + 1 < line.Notes.Length
                && line.Notes[note.Note.Index + 1].Place == note.Place;
            while (!repeats && at < places.Count && places[at] == place)
            {
                at++;
            }
        }

        return at == places.Count ? kept : [.. kept, $"{places.Count - at} more"];
    }

    private static Realization Realized(Recipe recipe) =>
        LineBuilder.Build(recipe).Then(line => Realizer.Realize(line, Player.At(2))).OrThrow();
}
