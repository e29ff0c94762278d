using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Tests.Architecture;

namespace Passagework.Tests.Exercises.Ideas;

public class IdeaSentenceTests
{
    private static readonly GoldenFile Golden = new(
        "tests",
        "Passagework.Tests",
        "Exercises",
        "Ideas",
        "Golden"
    );

    [Fact]
    public void Every_exercise_of_the_library_is_said_as_it_was_read_by_an_eye() =>
        Golden.Holds(
            "library-sentences.txt",
            string.Concat(
                Library.All.Select(exercise =>
                    $"{exercise.Id} ({IdeaTitle.Of(exercise.Recipe)})\n  {IdeaSentence.Of(exercise.Recipe)}\n"
                )
            )
        );

    // The sentence that the screen was drawn with, with the ending that its picture has.
    [Fact]
    public void Fives_with_a_held_root_are_said_so() =>
        Assert.Equal(
            "Five neighbouring notes of the A minor pentatonic, then the same from one note higher, up through box 1 to "
                + "its top; the root is held at the end.",
            Said("groups-of-five-up", ("movement.ending", "hold-root"))
        );

    [Theory]
    [InlineData(
        "cell.offsets",
        "1 2 5 2",
        "The notes 1 2 5 2 of the A minor pentatonic, counted upward, then"
    )]
    [InlineData(
        "cell.offsets",
        "1 – 3 2",
        "The notes 1 rest 3 2 of the A minor pentatonic, counted upward, then"
    )]
    [InlineData(
        "cell.offsets",
        "1 1 2 2",
        "Two neighbouring notes of the A minor pentatonic, each twice, then"
    )]
    [InlineData(
        "cell.offsets",
        "1 3 5",
        "Three notes of the A minor pentatonic with one left out between each two, then"
    )]
    [InlineData(
        "cell.offsets",
        "1 2 3 –",
        "Three neighbouring notes of the A minor pentatonic, then a rest, then the same"
    )]
    [InlineData("cell.offsets", "0 1 2", "Three neighbouring notes of the A minor pentatonic, then")]
    [InlineData(
        "movement.step",
        "-1",
        "rising, then the same from one note lower, down through box 1 to its bottom."
    )]
    [InlineData("movement.step", "2", "from two notes higher, up through box 1 as far as whole groups go.")]
    [InlineData("movement.step", "0", "up from the bottom of box 1, four times over.")]
    [InlineData(
        "movement.to",
        "5",
        "Five neighbouring notes of the A minor pentatonic, up through the first five notes of box 1."
    )]
    [InlineData("movement.repeat", "2", "up through box 1 to its top, all of it twice.")]
    [InlineData("rhythm.swing", "2/3", "to its top; swung two to one.")]
    [InlineData("rhythm.meter", "7/8", "to its top; in thirty-seconds, in 7/8.")]
    [InlineData("fretting.avoid", "1 2 3", "to its top; without the little finger.")]
    [InlineData("picking.technique", "all-up", "to its top; with up-strokes only.")]
    [InlineData("layout", "joined", "from one note on, up through boxes 1 and 2 joined to their top.")]
    [InlineData("layout", "open", "up through open position to its top.")]
    [InlineData("layout.near", "12", "up through box 1 near fret 12 to its top.")]
    public void One_thing_changed_changes_its_words(string key, string value, string words) =>
        Assert.Contains(words, Said("groups-of-five-up", (key, value)), StringComparison.Ordinal);

    // Swing acts on pairs of notes, so at three to the beat it changes nothing and is not said.
    [Fact]
    public void Swing_that_does_nothing_is_not_said() =>
        Assert.DoesNotContain(
            "swung",
            Said("groups-of-three-up", ("rhythm.swing", "2/3")),
            StringComparison.Ordinal
        );

    [Fact]
    public void A_written_line_is_counted_and_its_key_named()
    {
        var entry = new WrittenEntry { Place = Place.At(6, 5), Duration = Fraction.Of(1, 8) };
        var recipe = Library.Find("groups-of-five-up").OrThrow().Recipe;
        var written = new Recipe
        {
            Notes = recipe.Notes,
            Written = new WrittenLine([.. Enumerable.Repeat(entry, 32)]),
        };

        Assert.Equal("Thirty-two notes as written in A minor pentatonic.", IdeaSentence.Of(written));
        Assert.Equal("Thirty-two notes as written.", IdeaSentence.Of(written with { Notes = null }));
        Assert.Equal("A line of 32 notes", IdeaTitle.Of(written));
    }

    [Fact]
    public void Boxes_have_the_numbers_that_the_teacher_gives_them() =>
        Assert.Contains(
            "up through box 4 to its top",
            IdeaSentence.Of(
                Library.Find("groups-of-five-up").OrThrow().Recipe,
                new RoomStyle { Boxes = BoxNumbering.WithRootBox(4) }
            ),
            StringComparison.Ordinal
        );

    private static string Said(string id, (string Key, string Value) change) =>
        IdeaSentence.Of(
            IdeaChange.Set(Library.Find(id).OrThrow().Recipe, change.Key, change.Value).OrThrow()
        );
}
