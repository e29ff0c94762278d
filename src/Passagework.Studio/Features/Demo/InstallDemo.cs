using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Studio.Data;
using Passagework.Studio.Features.Choosing;
using Passagework.Studio.Features.Exercises;
using Passagework.Studio.Features.Settings;

namespace Passagework.Studio.Features.Demo;

/// <summary>Puts the demo in: at the first start, or when it is asked for again.</summary>
internal sealed class InstallDemo(
    Store store,
    ReadSettings settings,
    ChangeSettings change,
    RemoveDemo remove,
    TimeProvider time
)
{
    /// <summary>Puts it in where that was never done before; one that was taken out stays out.</summary>
    /// <returns>Why it could not be kept; null when it is, or need not be.</returns>
    public async Task<Fault?> AtFirstStart(CancellationToken stop = default) =>
        (await settings.Read(stop)).DemoWasInstalled ? null : await Install(stop);

    /// <summary>Puts it in; what is left of an earlier one goes first, what the teacher changed stays.</summary>
    /// <returns>Why it could not be kept; null when it is.</returns>
    public async Task<Fault?> Install(CancellationToken stop = default) =>
        await remove.Remove(stop) ?? await Saving.Do(() => Add(stop)) ?? await NameTheRoom(stop);

    private async Task Add(CancellationToken stop)
    {
        await using var db = await store.Open(stop);
            // A millisecond apart, so that the latest is listed first.
            var now = time.GetUtcNow();
            foreach (var (exercise, number) in DemoContent.Exercises.Select((one, i) => (one, i)))
                AddExercise(db, exercise, now.AddMilliseconds(number));

            foreach (var (name, number) in DemoContent.Pieces.Select((one, i) => (one, i)))
                db.Pieces.Add(PieceOf(name, now.AddMilliseconds(number)));

            foreach (var (decision, number) in DemoDecisions.All.Select((one, i) => (one, i)))
                db.Decisions.Add(RowOf(decision, now.AddMilliseconds(number)));

            await db.SaveChangesAsync(stop);
    }

    private Task<Fault?> NameTheRoom(CancellationToken stop)
    {
        var usual = new StudioSettings();
        return change.Change(
            now =>
                now with
                {
                    DemoWasInstalled = true,
                    Room = now.Room == usual.Room ? DemoContent.Room : now.Room,
                    Teacher = now.Teacher == usual.Teacher ? DemoContent.Teacher : now.Teacher,
                },
            stop
        );
    }

    private static void AddExercise(StudioDb db, DemoExercise exercise, DateTimeOffset when)
    {
        var recipe = DemoContent.Read(exercise.Name);
        var row = new ExerciseRow
        {
            Id = Guid.CreateVersion7(when),
            Recipe = RecipeJson.Write(recipe),
            Title = ExerciseReading.TitleOf(recipe),
            Labels = string.Join('\n', exercise.Labels),
            Notes = exercise.Notes,
            OnShelf = exercise.OnShelf,
            IsDemo = true,
            Changed = when,
        };
        db.Exercises.Add(row);
        db.Steps.Add(
            new StepRow
            {
                ExerciseId = row.Id,
                Number = 0,
                Recipe = row.Recipe,
                What = "",
            }
        );
    }

    private static PieceRow PieceOf(string name, DateTimeOffset when)
    {
        var recipe = DemoContent.Read(name);
        return new PieceRow
        {
            Id = Guid.CreateVersion7(when),
            Title = ExerciseReading.TitleOf(recipe),
            Recipe = RecipeJson.Write(recipe),
            IsDemo = true,
            Added = when,
        };
    }

    private static DecisionRow RowOf(DemoDecision decision, DateTimeOffset when) =>
        new()
        {
            Id = Guid.CreateVersion7(when),
            Kept = when,
            Question = AskedJson.Write(decision.Question),
            Exercise = decision.Exercise,
            Title = decision.Title,
            Verdict = decision.Verdict,
            Reason = decision.Reason,
            IsDemo = true,
        };
}
