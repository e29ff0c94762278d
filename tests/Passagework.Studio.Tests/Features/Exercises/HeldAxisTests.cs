using Passagework.Hands;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Tests.Features.Exercises;

public sealed class HeldAxisTests : IAsyncLifetime
{
    private const string Cell = "movement.step";
    private static readonly TimeSpan Soon = TimeSpan.FromSeconds(0.4);
    private static readonly TimeSpan Later = TimeSpan.FromSeconds(1.1);
    private readonly Clock _clock = new();
    private Room _room = null!;
    private ExerciseDesk _desk = null!;

    public async ValueTask InitializeAsync()
    {
        _room = await Room.Open(_clock);
        _desk = _room.Feature<ExerciseDesk>();
        Assert.Null(await _desk.Open(new ExerciseKey("groups-of-five-up"), Player.At(2)));
    }

    public ValueTask DisposeAsync() => _room.DisposeAsync();

    [Fact]
    public async Task Steps_that_follow_one_another_are_undone_and_done_again_as_one()
    {
        await Step(Cell, 1, Soon, times: 3);
        Assert.Equal(4, _desk.Recipe.Movement.Step);
        Assert.EndsWith(
            "from by one step to by four steps",
            _desk.Exercise!.Undoes,
            StringComparison.Ordinal
        );

        await _desk.Undo();
        Assert.Equal(1, _desk.Recipe.Movement.Step);
        Assert.Null(_desk.Exercise.Undoes);
        await _desk.Redo();
        Assert.Equal(4, _desk.Recipe.Movement.Step);
    }

    [Fact]
    public async Task A_pause_another_control_and_undoing_begin_a_step_of_their_own()
    {
        await Step(Cell, 1, Later, times: 2);
        await _desk.Undo();
        Assert.Equal(2, _desk.Recipe.Movement.Step);

        await Step(Cell, 1, Soon);
        await _desk.Undo();
        Assert.Equal(2, _desk.Recipe.Movement.Step);

        await Step(Cell, 1, Soon);
        await Step("rhythm.notesPerBeat", -1, Soon);
        await Step(Cell, 1, Soon);
        await _desk.Undo();
        Assert.Equal((3, 3), (_desk.Recipe.Movement.Step, _desk.Recipe.Rhythm.NotesPerBeat));
        await _desk.Undo();
        Assert.Equal((3, 4), (_desk.Recipe.Movement.Step, _desk.Recipe.Rhythm.NotesPerBeat));
        await _desk.Undo();
        Assert.Equal(2, _desk.Recipe.Movement.Step);
    }

    [Fact]
    public async Task Stepping_back_to_where_it_began_leaves_no_step()
    {
        await Step(Cell, 1, Later, times: 2);
        await Step(Cell, -1, Soon);
        Assert.Equal(2, _desk.Recipe.Movement.Step);
        Assert.EndsWith("from by one step to by two steps", _desk.Exercise!.Undoes, StringComparison.Ordinal);

        // The one after is a step of its own and takes nothing away.
        await Step(Cell, 1, Soon);
        await _desk.Undo();
        Assert.Equal(2, _desk.Recipe.Movement.Step);
        await _desk.Undo();
        Assert.Equal(1, _desk.Recipe.Movement.Step);
        Assert.Null(_desk.Exercise.Undoes);
    }

    [Fact]
    public async Task What_was_kept_in_between_is_not_taken_into_the_step()
    {
        await Step(Cell, 1, Soon);
        _desk.Refresh(
            Assert
                .IsType<ChangeAnswer.Kept>(
                    await _room
                        .Feature<AnnotateExercise>()
                        .Annotate(_desk.Exercise!, "slowly", [], TestContext.Current.CancellationToken)
                )
                .Exercise
        );
        await Step(Cell, 1, Soon);

        await _desk.Undo();
        Assert.Equal(2, _desk.Recipe.Movement.Step);
    }

    private async Task Step(string axis, int by, TimeSpan after, int times = 1)
    {
        for (var time = 0; time < times; time++)
        {
            _clock.Forward(after);
            await _desk.Step(axis, by);
            Assert.Null(_desk.Problem);
        }
    }
}
