using Passagework.Exercises;
using Passagework.Foundation;
using static Passagework.Tests.Exercises.ShortIdeas;

namespace Passagework.Tests.Exercises;

public class LibraryTests
{
    [Fact]
    public void All_holds_the_forms_of_every_family_in_order()
    {
        string[] oneByOne =
        [
            "diagonal-up",
            "diagonal-down",
            "two-string-loop",
            "bursts-five",
            "bursts-nine",
            "bursts-twelve",
            "finger-orders-in-order",
            "finger-orders-crossed",
            "finger-orders-outside-in",
            "thumb-and-fingers-rolling",
            "thumb-and-fingers-out-and-back",
            "trill-one-three",
            "trill-one-four",
        ];
        const string ThreeForms =
            "straight groups-of-three groups-of-four groups-of-five groups-of-six groups-of-seven reversed-threes "
            + "out-and-back-fours out-and-back-sixes every-other-note skipped-fifths skipped-fours pedal "
            + "one-sided-rolls-low one-sided-rolls-high three-string-sweeps slurred-threes position-shift "
            + "displaced-fours scale-thirds three-per-string-fours one-string-run first-notes";
        var expected = ThreeForms
            .Split(' ')
            .SelectMany(family => new[] { $"{family}-up", $"{family}-down", $"{family}-up-and-down" })
            .Concat(oneByOne);

        Assert.Equal(expected, Library.All.Select(exercise => exercise.Id));
    }

    [Theory]
    [InlineData("groups-of-five-up", "groups-of-five", "up")]
    [InlineData("two-string-loop", "two-string-loop", "")]
    [InlineData("one-sided-rolls-low-up-and-down", "one-sided-rolls-low", "up-and-down")]
    public void Find_knows_family_and_form(string id, string family, string form)
    {
        var found = Library.Find(id).OrThrow();

        Assert.Equal((family, form), (found.Family, found.Form));
    }

    [Theory]
    [InlineData(
        "groups-of-fiv-up",
        "no exercise 'groups-of-fiv-up' in the library; did you mean 'groups-of-five-up'?"
    )]
    [InlineData(
        "groups-of-five",
        "'groups-of-five' is a family of exercises; one of its forms: groups-of-five-up, groups-of-five-down, "
            + "groups-of-five-up-and-down"
    )]
    public void Find_suggests_what_was_meant(string id, string expected) =>
        Assert.Equal(expected, Refused(id).ToString());

    [Fact]
    public void Find_lists_the_families_when_nothing_is_near() =>
        Assert.StartsWith(
            "no exercise 'qwertyuiopasdfgh' in the library; one of the families straight, groups-of-three, ",
            Refused("qwertyuiopasdfgh").ToString(),
            StringComparison.Ordinal
        );

    [Fact]
    public void Every_exercise_says_what_it_is_and_what_it_is_for() =>
        Assert.All(
            Library.All,
            exercise =>
            {
                Assert.NotEmpty(exercise.Recipe.Title ?? "");
                Assert.NotEmpty(exercise.Recipe.Purpose ?? "");
                Assert.Equal(exercise.Id, exercise.Recipe.Id);
            }
        );

    [Fact]
    public void Titles_tell_exercises_apart() =>
        Assert.Equal(82, Library.All.Select(exercise => exercise.Recipe.Title).Distinct().Count());

    [Theory]
    [InlineData("one-sided-rolls-low-up", Technique.Sweep)]
    [InlineData("one-sided-rolls-high-down", Technique.Sweep)]
    [InlineData("three-string-sweeps-up-and-down", Technique.Sweep)]
    [InlineData("thumb-and-fingers-rolling", Technique.Fingers)]
    [InlineData("first-notes-up", Technique.AllDown)]
    [InlineData("groups-of-five-up", Technique.Alternate)]
    public void Families_ship_with_their_technique(string id, Technique technique) =>
        Assert.Equal(technique, Library.Find(id).OrThrow().Recipe.Picking.Technique);

    [Theory]
    [InlineData("finger-orders-in-order", "1 2 3 4", "4 3 2 1")]
    [InlineData("finger-orders-crossed", "1 3 2 4", "4 2 3 1")]
    [InlineData("finger-orders-outside-in", "1 4 2 3", "4 1 3 2")]
    public void Finger_orders_lock_every_finger_in_the_fifth_position(string id, string up, string down)
    {
        var recipe = Library.Find(id).OrThrow().Recipe;
        var locks = recipe.Fretting.Locks;
        var notes = Line(recipe).Notes;

        Assert.Equal(48, locks.Length);
        Assert.Equal(up, string.Join(' ', locks.Take(4).Select(held => held.Finger)));
        Assert.Equal(down, string.Join(' ', locks.Skip(24).Take(4).Select(held => held.Finger)));
        Assert.All(
            locks,
            held => Assert.Equal(notes[held.Note].Place?.Fret, held.Position + held.Finger - 1)
        );
    }

    [Theory]
    [InlineData("first-notes-up", 5)]
    [InlineData("first-notes-down", 5)]
    [InlineData("first-notes-up-and-down", 10)]
    public void First_notes_take_a_finger_to_a_fret(string id, int fretted)
    {
        var recipe = Library.Find(id).OrThrow().Recipe;
        var notes = Line(recipe).Notes;

        Assert.Equal(fretted, recipe.Fretting.Locks.Length);
        Assert.All(recipe.Fretting.Locks, held => Assert.Equal(notes[held.Note].Place?.Fret, held.Finger));
        Assert.Equal(fretted, notes.Count(note => note.Place?.IsOpen == false));
    }

    [Theory]
    [InlineData("thumb-and-fingers-rolling", "Thumb Index Middle Ring")]
    [InlineData("thumb-and-fingers-out-and-back", "Thumb Index Middle Ring Middle Index")]
    public void Thumb_and_fingers_pluck_a_finger_to_a_string(string id, string expected)
    {
        var recipe = Library.Find(id).OrThrow().Recipe;
        var locks = recipe.Fretting.Locks;
        var round = expected.Split(' ').Length;

        Assert.Equal(expected, string.Join(' ', locks.Take(round).Select(held => held.Stroke)));
        Assert.Equal(Line(recipe).Notes.Length, locks.Length);
        Assert.All(locks, held => Assert.Equal(locks[held.Note % round].Stroke, held.Stroke));
    }

    [Theory]
    [InlineData("trill-one-three", 3)]
    [InlineData("trill-one-four", 4)]
    public void Trills_are_played_by_the_fingers_in_their_name(string id, int finger)
    {
        var locks = Library.Find(id).OrThrow().Recipe.Fretting.Locks;

        Assert.Equal(32, locks.Length);
        Assert.All(locks, held => Assert.Equal(held.Note % 2 == 0 ? 1 : finger, held.Finger));
    }

    private static Fault Refused(string id) =>
        Library.Find(id).TryGet(out var found, out var fault)
            ? throw new InvalidOperationException(found.Id)
            : fault;
}
