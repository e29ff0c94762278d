using Passagework.Exercises;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Tests.Features.Exercises;

public sealed class ExerciseChangesTests : IAsyncLifetime
{
    private Room _room = null!;

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public async ValueTask InitializeAsync() => _room = await Room.Open();

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Fact]
    public async Task Changing_one_of_the_library_makes_an_own_one_and_leaves_the_library()
    {
        var library = await Open("groups-of-five-up");

        var own = await Change(library, WithStep(library, 2), "step from one to two");

        Assert.True(own.Key.IsOwn(out _));
        Assert.False(own.OnShelf);
        Assert.Equal("step from one to two", own.Undoes);
        Assert.Equal(1, (await Open("groups-of-five-up")).Recipe.Movement.Step);
        Assert.Equal(2, (await Open(own.Key.Text)).Recipe.Movement.Step);
    }

    [Fact]
    public async Task Marks_of_one_of_the_library_go_along_with_the_own_one_it_becomes()
    {
        var marking = _room.Feature<MarkExercise>();
        var library = await Open("groups-of-five-up");
        Assert.Null(await marking.Mark(library.Key, "fits my band", "80", Stop));

        var changed = await Change(library, WithStep(library, 2), "to 2");
        var copied = Kept(await _room.Feature<CopyExercise>().Copy(library, library.Recipe, Stop));
        var noted = Kept(await _room.Feature<AnnotateExercise>().Annotate(library, "slowly", [], Stop));

        foreach (var own in new[] { changed, copied, noted })
            Assert.Equal([("fits-my-band", 80)], await marking.Read(own.Key, Stop));

        Assert.Null(await marking.Mark(changed.Key, "fits my band", "30", Stop));
        Assert.Equal([("fits-my-band", 80)], await marking.Read(library.Key, Stop));
        Assert.Equal([("fits-my-band", 30)], await marking.Read(changed.Key, Stop));
    }

    [Fact]
    public async Task Every_change_can_be_undone_to_the_start_and_done_again()
    {
        var exercise = await Open("groups-of-five-up");
        for (var step = 2; step <= 7; step++)
            exercise = await Change(exercise, WithStep(exercise, step), $"to {step}");

        var undo = _room.Feature<UndoExercise>();
        for (var step = 6; step >= 1; step--)
        {
            exercise = Kept(await undo.Undo(exercise, Stop));
            Assert.Equal(step, exercise.Recipe.Movement.Step);
        }

        Assert.Null(exercise.Undoes);
        Assert.Equal("to 2", exercise.Redoes);
        Assert.Equal(2, Kept(await undo.Redo(exercise, Stop)).Recipe.Movement.Step);
    }

    [Fact]
    public async Task A_new_change_forgets_what_was_undone()
    {
        var exercise = await Open("groups-of-five-up");
        exercise = await Change(exercise, WithStep(exercise, 2), "to 2");
        exercise = await Change(exercise, WithStep(exercise, 3), "to 3");
        exercise = Kept(await _room.Feature<UndoExercise>().Undo(exercise, Stop));

        exercise = await Change(exercise, WithStep(exercise, 5), "to 5");

        Assert.Null(exercise.Redoes);
        Assert.Equal("to 5", exercise.Undoes);
    }

    [Fact]
    public async Task The_second_of_two_pages_is_told_and_nothing_is_overwritten()
    {
        var begun = await Change(
            await Open("groups-of-five-up"),
            WithStep(await Open("groups-of-five-up"), 2),
            "to 2"
        );
        var (here, there) = (await Open(begun.Key.Text), await Open(begun.Key.Text));

        await Change(here, WithStep(here, 3), "to 3");
        var answer = await _room.Feature<ChangeExercise>().Change(there, WithStep(there, 4), "to 4", Stop);

        var theirs = Assert.IsType<ChangeAnswer.ChangedElsewhere>(answer).Theirs;
        Assert.Equal(3, theirs.Recipe.Movement.Step);
        Assert.Equal(3, (await Open(begun.Key.Text)).Recipe.Movement.Step);
    }

    [Fact]
    public async Task Remarks_and_labels_are_kept_beside_the_idea()
    {
        var library = await Open("groups-of-five-up");

        var own = Kept(
            await _room
                .Feature<AnnotateExercise>()
                .Annotate(library, "Yuna: try it at fret 9", [" reach ", "reach", ""], Stop)
        );

        Assert.Equal("Yuna: try it at fret 9", (await Open(own.Key.Text)).Notes);
        Assert.Equal(["reach"], own.Labels);
    }

    [Fact]
    public async Task A_copy_is_an_exercise_of_its_own()
    {
        var library = await Open("groups-of-five-up");

        var copy = Kept(await _room.Feature<CopyExercise>().Copy(library, library.Recipe, Stop));

        Assert.Equal("Groups of five, rising, copy", copy.Title);
        Assert.True(copy.OnShelf);
        Assert.NotEqual(library.Key, copy.Key);
    }

    [Fact]
    public async Task What_was_thrown_away_can_be_brought_back()
    {
        var library = await Open("groups-of-five-up");
        var own = await Change(library, WithStep(library, 2), "to 2");
        Assert.True(own.Key.IsOwn(out var id));

        await _room.Feature<ThrowAwayExercise>().Remove(id, Stop);
        var gone = await _room.Feature<OpenExercise>().Open(own.Key, Stop);
        await _room.Feature<ThrowAwayExercise>().BringBack(id, Stop);

        Assert.False(gone.TryGet(out _, out var fault));
        Assert.Contains("thrown away", fault!.What, StringComparison.Ordinal);
        Assert.Equal(2, (await Open(own.Key.Text)).Recipe.Movement.Step);
    }

    [Theory]
    [InlineData("no-such-exercise")]
    [InlineData("00000000000000000000000000000000")]
    [InlineData("../settings")]
    public async Task An_exercise_that_is_not_there_is_a_fault(string key) =>
        Assert.False(
            (await _room.Feature<OpenExercise>().Open(new ExerciseKey(key), Stop)).TryGet(out _, out _)
        );

    private async Task<OpenedExercise> Open(string key) =>
        (await _room.Feature<OpenExercise>().Open(new ExerciseKey(key), Stop)).OrThrow();

    private async Task<OpenedExercise> Change(OpenedExercise before, Recipe recipe, string what) =>
        Kept(await _room.Feature<ChangeExercise>().Change(before, recipe, what, Stop));

    private static OpenedExercise Kept(ChangeAnswer answer) =>
        Assert.IsType<ChangeAnswer.Kept>(answer).Exercise;

    private static Recipe WithStep(OpenedExercise exercise, int step) =>
        exercise.Recipe with
        {
            Movement = exercise.Recipe.Movement with { Step = step },
        };
}
