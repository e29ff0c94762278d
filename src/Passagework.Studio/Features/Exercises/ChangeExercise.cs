using Microsoft.EntityFrameworkCore;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Exercises;

/// <summary>Keeps every change of an exercise at once; one of the library becomes an own one.</summary>
internal sealed class ChangeExercise(Store store, TimeProvider time)
{
    /// <summary>Keeps the idea as the next step; steps that had been undone are forgotten.</summary>
    /// <param name="before">The exercise as the page has it.</param>
    /// <param name="recipe">The idea after the change.</param>
    /// <param name="what">The change in words, such as "step from one to two".</param>
    /// <param name="stop">Gives up.</param>
    public async Task<ChangeAnswer> Change(
        OpenedExercise before,
        Recipe recipe,
        string what,
        CancellationToken stop = default
    ) =>
        before.Key.IsOwn(out var id)
            ? await Keep((before, id), (db, row) => Add(db, row, (recipe, what), stop), stop)
            : await Saving.Try(async () =>
            {
                await using var db = await store.Open(stop);
                return await Begin(db, (before.Recipe, recipe), before.Key.Text, what, stop);
            });

    /// <summary>Keeps the idea as what the last step led to; there is no step when it led back to where it began.</summary>
    /// <param name="before">The exercise as the page has it, an own one, after its last step.</param>
    /// <param name="recipe">The idea after the change.</param>
    /// <param name="what">The change in words from before the last step.</param>
    /// <param name="stop">Gives up.</param>
    public async Task<ChangeAnswer> GoOn(
        OpenedExercise before,
        Recipe recipe,
        string what,
        CancellationToken stop = default
    ) =>
        before.Key.IsOwn(out var id)
            ? await Keep((before, id), (db, row) => Lead(db, row, (recipe, what), stop), stop)
            : await Change(before, recipe, what, stop);

    /// <summary>Begins an exercise of the teacher's own from an idea.</summary>
    public async Task<ChangeAnswer> Begin(
        Recipe recipe,
        string? origin = null,
        CancellationToken stop = default
    ) =>
        await Saving.Try(async () =>
        {
            await using var db = await store.Open(stop);
            return await Begin(db, (recipe, recipe), origin, null, stop);
        });

    private Task<ChangeAnswer> Keep(
        (OpenedExercise Exercise, Guid Id) before,
        Func<StudioDb, ExerciseRow, Task> write,
        CancellationToken stop
    ) =>
        Saving.Try(async () =>
        {
            await using var db = await store.Open(stop);
            if (await ExerciseReading.Find(db, before.Id, stop) is not { } row)
            {
                return new ChangeAnswer.Failed(
                    new Fault(
                        "it was thrown away on another page",
                        before.Exercise.Title,
                        "bring it back from the shelf"
                    )
                );
            }

            if (row.Version != before.Exercise.Version)
            {
                return await ExerciseAnswers.Elsewhere(db, row, stop);
            }

            // In one go: where the new step cannot be kept, those that had been undone are still there.
            await using var all = await db.Database.BeginTransactionAsync(stop);
            await write(db, row);
            var answer = await ExerciseAnswers.Save(db, row, stop);
            if (answer is ChangeAnswer.Kept)
                await all.CommitAsync(stop);

            return answer;
        });

    private async Task Add(
        StudioDb db,
        ExerciseRow row,
        (Recipe Recipe, string What) change,
        CancellationToken stop
    )
    {
        await db
            .Steps.Where(step => step.ExerciseId == row.Id && step.Number > row.Step)
            .ExecuteDeleteAsync(stop);
        row.Step++;
        Write(row, change.Recipe);
        db.Steps.Add(StepOf(row, change.What));
    }

    private async Task Lead(
        StudioDb db,
        ExerciseRow row,
        (Recipe Recipe, string What) change,
        CancellationToken stop
    )
    {
        var steps = await db
            .Steps.Where(step => step.ExerciseId == row.Id && step.Number >= row.Step - 1)
            .OrderBy(step => step.Number)
            .ToListAsync(stop);
        Write(row, change.Recipe);
        var (first, last) = (steps[0], steps[1]);
        if (first.Recipe == row.Recipe)
        {
            row.Step--;
            db.Steps.Remove(last);
        }
        else
        {
            (last.Recipe, last.What) = (row.Recipe, change.What);
        }
    }

    private async Task<ChangeAnswer> Begin(
        StudioDb db,
        (Recipe First, Recipe Now) recipes,
        string? origin,
        string? what,
        CancellationToken stop
    )
    {
        var row = new ExerciseRow
        {
            Id = Guid.CreateVersion7(time.GetUtcNow()),
            Recipe = "",
            Title = "",
            Origin = origin,
        };
        Write(row, recipes.First);
        db.Exercises.Add(row);
        db.Steps.Add(StepOf(row, ""));
        if (what is not null)
        {
            row.Step = 1;
            Write(row, recipes.Now);
            db.Steps.Add(StepOf(row, what));
        }

        await TakeMarks(db, row, stop);
        return await ExerciseAnswers.Save(db, row, stop);
    }

    // What the teacher gave the exercise it began as holds for it until it is given something else.
    private static async Task TakeMarks(StudioDb db, ExerciseRow row, CancellationToken stop)
    {
        var given = await db
            .Marks.AsNoTracking()
            .Where(mark => mark.Exercise == row.Origin)
            .ToListAsync(stop);
        db.Marks.AddRange(
            given.Select(mark => new MarkRow
            {
                Exercise = ExerciseKey.Of(row.Id).Text,
                Criterion = mark.Criterion,
                Value = mark.Value,
            })
        );
    }

    private void Write(ExerciseRow row, Recipe recipe)
    {
        row.Recipe = RecipeJson.Write(recipe);
        row.Title = ExerciseReading.TitleOf(recipe);
        row.Changed = time.GetUtcNow();
    }

    private static StepRow StepOf(ExerciseRow row, string what) =>
        new()
        {
            ExerciseId = row.Id,
            Number = row.Step,
            Recipe = row.Recipe,
            What = what,
        };
}
