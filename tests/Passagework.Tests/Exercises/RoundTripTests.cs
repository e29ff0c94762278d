using Passagework.Exercises;
using Passagework.Instrument;
using Passagework.Tests.Instrument;
using Passagework.Theory;

namespace Passagework.Tests.Exercises;

/// <summary>Every exercise of the library in every key, on several instruments.</summary>
public class RoundTripTests
{
    private static readonly string[] Keys = "C C# D Eb E F F# G G# A Bb B".Split(' ');

    // Family by family, the forms × keys whose layout does not exist there; everything else is laid out. By hand: a
    // run from a written place needs that place in the scale (5 of 12 keys lack it in a seven-note scale, 7 of 12 in
    // a pentatonic one); open position may hold fewer notes than first-notes names; the chain of a high box 1 (Eb,
    // fret 11; on open G C#, D and Eb) passes fret 22; a bass has no strings 5 and 6, and eight notes in a box.
    [Theory]
    [InlineData("standard", "position-shift 3, three-per-string-fours 15, first-notes 3, diagonal 14")]
    [InlineData("drop D", "position-shift 3, three-per-string-fours 15, first-notes 3, diagonal 14")]
    [InlineData("open G", "position-shift 9, three-per-string-fours 15, first-notes 36, diagonal 14")]
    [InlineData("seven-string", "position-shift 3, three-per-string-fours 15, diagonal 14")]
    [InlineData(
        "bass",
        "position-shift 3, three-per-string-fours 36, first-notes 36, diagonal 24, bursts 24, finger-orders 36, "
            + "thumb-and-fingers 24"
    )]
    public void Every_exercise_is_laid_out_in_every_key_and_survives_its_file(string tuning, string refused)
    {
        var missing = new List<string>();
        foreach (var exercise in Library.All)
        {
            foreach (var recipe in Keys.Select(key => Changed(exercise.Recipe, key, tuning)))
            {
                if (LineBuilder.Build(recipe).TryGet(out var line, out _))
                {
                    Assert.Equal(recipe, RecipeJson.Read(RecipeJson.Write(recipe)).OrThrow());
                    AssertPlayable(line);
                }
                else
                {
                    missing.Add(exercise.Family);
                }
            }
        }

        var counted = missing.GroupBy(family => family).Select(forms => $"{forms.Key} {forms.Count()}");
        Assert.Equal(refused, string.Join(", ", counted));
    }

    [Fact]
    public void Library_files_are_written_as_they_are_read() =>
        Assert.All(
            Library.All,
            exercise =>
                Assert.Equal(exercise.Recipe, RecipeJson.Read(RecipeJson.Write(exercise.Recipe)).OrThrow())
        );

    private static Recipe Changed(Recipe recipe, string key, string tuning)
    {
        var notes = recipe.Notes ?? throw new InvalidOperationException("a library exercise without notes");
        // Locks belong to the notes of the exercise as it stands.
        return recipe with
        {
            Notes = Necks.Notes(key, notes.Scale ?? ""),
            Instrument = Necks.Tuned(tuning),
            Fretting = recipe.Fretting with { Locks = [] },
        };
    }

    private static void AssertPlayable(Line line)
    {
        var notes = line.Recipe.Notes;
        foreach (var note in line.Notes)
        {
            Assert.True(note.Place is { } place && line.Recipe.Instrument.Has(place));
            Assert.True(line.Recipe.Layout is Layout.Given || notes?.Contains(note.Midi) == true);
            Assert.Equal(note.Midi, note.Pitch.Midi);
        }
    }
}
