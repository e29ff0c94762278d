using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Exercises;

/// <summary>Puts an exercise that was begun onto the shelf.</summary>
internal sealed class KeepExercise(Store store, ChangeExercise change)
{
    /// <summary>The exercise on the shelf; one of the library is there already.</summary>
    public Task<ChangeAnswer> Keep(OpenedExercise before, CancellationToken stop = default) =>
        Saving.Try(async () =>
        {
            await using var db = await store.Open(stop);
            if (!before.Key.IsOwn(out var id))
            {
                return new ChangeAnswer.Kept(before);
            }

            if (await ExerciseReading.Find(db, id, stop) is not { } row)
            {
                return await change.Begin(before.Recipe, stop: stop);
            }

            row.OnShelf = true;
            return await ExerciseAnswers.Save(db, row, stop);
        });
}
