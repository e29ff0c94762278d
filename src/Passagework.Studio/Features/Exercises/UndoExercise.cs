using Microsoft.EntityFrameworkCore;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Exercises;

/// <summary>Goes back and forth over the changes of an exercise, without limit.</summary>
internal sealed class UndoExercise(Store store, TimeProvider time)
{
    /// <summary>One change back.</summary>
    public Task<ChangeAnswer> Undo(OpenedExercise before, CancellationToken stop = default) =>
        Go(before, -1, stop);

    /// <summary>One change forth again.</summary>
    public Task<ChangeAnswer> Redo(OpenedExercise before, CancellationToken stop = default) =>
        Go(before, 1, stop);

    private Task<ChangeAnswer> Go(OpenedExercise before, int by, CancellationToken stop) =>
        Saving.Try(async () =>
        {
            await using var db = await store.Open(stop);
            if (!before.Key.IsOwn(out var id) || await ExerciseReading.Find(db, id, stop) is not { } row)
            {
                return new ChangeAnswer.Kept(before);
            }

            if (row.Version != before.Version)
            {
                return await ExerciseAnswers.Elsewhere(db, row, stop);
            }

            var step = await db
                .Steps.AsNoTracking()
                .SingleOrDefaultAsync(one => one.ExerciseId == id && one.Number == row.Step + by, stop);
            if (step is null)
            {
                return new ChangeAnswer.Kept(before);
            }

            row.Step = step.Number;
            row.Recipe = step.Recipe;
            row.Changed = time.GetUtcNow();
            if (Passagework.Exercises.RecipeJson.Read(step.Recipe).TryGet(out var recipe, out _))
                row.Title = ExerciseReading.TitleOf(recipe);

            return await ExerciseAnswers.Save(db, row, stop);
        });
}
