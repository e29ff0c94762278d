using Passagework.Foundation;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Exercises;

/// <summary>Finds an exercise by the key in its address.</summary>
internal sealed class OpenExercise(Store store)
{
    /// <summary>The exercise, or why there is none.</summary>
    public async Task<Outcome<OpenedExercise>> Open(ExerciseKey key, CancellationToken stop = default)
    {
        if (!key.IsOwn(out var id))
        {
            return ExerciseReading.Library(key.Text);
        }

        await using var db = await store.Open(stop);
        return await ExerciseReading.Find(db, id, stop) is { } row
            ? await ExerciseReading.Read(db, row, stop)
            : new Fault(
                "there is no such exercise, or it was thrown away",
                "the address",
                "one from the shelf"
            );
    }
}
