using Microsoft.EntityFrameworkCore;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Exercises;

/// <summary>Saves a changed row and answers with what is there then.</summary>
internal static class ExerciseAnswers
{
    /// <summary>Saves; a change by another page in the meantime wins and is shown.</summary>
    public static async Task<ChangeAnswer> Save(StudioDb db, ExerciseRow row, CancellationToken stop)
    {
        try
        {
            await db.SaveChangesAsync(stop);
        }
        catch (DbUpdateConcurrencyException wrong)
        {
            foreach (var entry in wrong.Entries)
                await entry.ReloadAsync(stop);

            return await Elsewhere(db, row, stop);
        }

        return (await ExerciseReading.Read(db, row, stop)).TryGet(out var exercise, out var fault)
            ? new ChangeAnswer.Kept(exercise)
            : new ChangeAnswer.Failed(fault);
    }

    /// <summary>The answer when the row is not as the page had it.</summary>
    public static async Task<ChangeAnswer> Elsewhere(StudioDb db, ExerciseRow row, CancellationToken stop) =>
        (await ExerciseReading.Read(db, row, stop)).TryGet(out var theirs, out var fault)
            ? new ChangeAnswer.ChangedElsewhere(theirs)
            : new ChangeAnswer.Failed(fault);
}
