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
        await Saving.Try(async () =>
        {
            await using var db = await store.Open(stop);
            if (!before.Key.IsOwn(out var id))
            {
                return await Begin(db, (before.Recipe, recipe), before.Key.Text, what, stop);
            }

            var row = await ExerciseReading.Find(db, id, stop);
            if (row is null)
            {
                return new ChangeAnswer.Failed(
                    new Fault(
                        "it was thrown away on another page",
                        before.Title,
                        "bring it back from the shelf"
                    )
                );
            }

            if (row.Version != before.Version)
            {
                return await ExerciseAnswers.Elsewhere(db, row, stop);
            }

            return await Next(db, row, recipe, what, stop);
        });

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

    // In one go: where the new step cannot be kept, those that had been undone are still there.
    private async Task<ChangeAnswer> Next(
        StudioDb db,
        ExerciseRow row,
        Recipe recipe,
        string what,
        CancellationToken stop
    )
    {
        await using var all = await db.Database.BeginTransactionAsync(stop);
        await db
            .Steps.Where(step => step.ExerciseId == row.Id && step.Number > row.Step)
            .ExecuteDeleteAsync(stop);
        row.Step++;
        Write(row, recipe);
        db.Steps.Add(StepOf(row, what));
        var answer = await ExerciseAnswers.Save(db, row, stop);
        if (answer is ChangeAnswer.Kept)
            await all.CommitAsync(stop);

        return answer;
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

        return await ExerciseAnswers.Save(db, row, stop);
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
