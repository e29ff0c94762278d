using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Studio.Data;
using Passagework.Studio.Features.Choosing;
using Passagework.Studio.Features.Exercises;
using Passagework.Studio.Features.Settings;

namespace Passagework.Studio.Features.Demo;

/// <summary>Puts the demo in: at the first start, or when it is asked for again.</summary>
internal sealed class InstallDemo(Store store, TimeProvider time)
{
    /// <summary>Puts it in where that was never done before; one that was taken out stays out.</summary>
    /// <returns>Why it could not be kept; null when it is, or need not be.</returns>
    public Task<Fault?> AtFirstStart(CancellationToken stop = default) =>
        Saving.Do(async () =>
        {
            await using var db = await store.Open(stop);
            if (!(await ReadSettings.Read(db, stop)).DemoWasInstalled)
                await Install(db, isFirst: true, stop);
        });

    /// <summary>Puts it in; what is left of an earlier one goes first, what the teacher changed stays.</summary>
    /// <returns>Why it could not be kept; null when it is.</returns>
    public Task<Fault?> Install(CancellationToken stop = default) =>
        Saving.Do(async () =>
        {
            await using var db = await store.Open(stop);
            await Install(db, isFirst: false, stop);
        });

    // In one go, and one studio after the other: two that are started at once put it in once.
    private async Task Install(StudioDb db, bool isFirst, CancellationToken stop)
    {
        await using var all = await db.Database.BeginTransactionAsync(stop);
        if (isFirst && (await ReadSettings.Read(db, stop)).DemoWasInstalled)
        {
            return;
        }

        await RemoveDemo.Delete(db, stop);
        Add(db);
        var usual = new StudioSettings();
        await ChangeSettings.Set(
            db,
            now =>
                now with
                {
                    DemoWasInstalled = true,
                    Room = now.Room == usual.Room ? DemoContent.Room : now.Room,
                    Teacher = now.Teacher == usual.Teacher ? DemoContent.Teacher : now.Teacher,
                },
            stop
        );
        await db.SaveChangesAsync(stop);
        await all.CommitAsync(stop);
    }

    private void Add(StudioDb db)
    {
        // A millisecond apart, so that the latest is listed first.
        var now = time.GetUtcNow();
        foreach (var (exercise, number) in DemoContent.Exercises.Select((one, i) => (one, i)))
            AddExercise(db, exercise, now.AddMilliseconds(number));

        foreach (var (name, number) in DemoContent.Pieces.Select((one, i) => (one, i)))
            db.Pieces.Add(PieceOf(name, now.AddMilliseconds(number)));

        foreach (var (decision, number) in DemoDecisions.All.Select((one, i) => (one, i)))
            db.Decisions.Add(RowOf(decision, now.AddMilliseconds(number)));
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
