using Microsoft.EntityFrameworkCore;
using Passagework.Foundation;
using Passagework.Studio.Data;
using Passagework.Studio.Features.Settings;

namespace Passagework.Studio.Features.Demo;

/// <summary>Takes the demo out for good, and nothing else.</summary>
/// <remarks>An exercise of the demo that the teacher changed, relabelled or annotated is the teacher's own from then on.</remarks>
internal sealed class RemoveDemo(Store store)
{
    /// <summary>Whether anything of it is there.</summary>
    public async Task<bool> IsThere(CancellationToken stop = default)
    {
        await using var db = await store.Open(stop);
        return await db.Exercises.AnyAsync(row => row.IsDemo, stop)
            || await db.Pieces.AnyAsync(row => row.IsDemo, stop)
            || await db.Decisions.AnyAsync(row => row.IsDemo, stop);
    }

    /// <summary>Takes it out, in one go.</summary>
    /// <returns>Why that could not be kept; null when it is.</returns>
    public Task<Fault?> Remove(CancellationToken stop = default) =>
        Saving.Do(async () =>
        {
            await using var db = await store.Open(stop);
            await using var all = await db.Database.BeginTransactionAsync(stop);
            await Delete(db, stop);
            var usual = new StudioSettings();
            await ChangeSettings.Set(
                db,
                now =>
                    now with
                    {
                        Room = now.Room == DemoContent.Room ? usual.Room : now.Room,
                        Teacher = now.Teacher == DemoContent.Teacher ? usual.Teacher : now.Teacher,
                    },
                stop
            );
            await db.SaveChangesAsync(stop);
            await all.CommitAsync(stop);
        });

    /// <summary>Deletes its rows in a database that is open, within the transaction there.</summary>
    public static async Task Delete(StudioDb db, CancellationToken stop)
    {
        await db
            .Exercises.Where(row => row.IsDemo && (row.Version == 0 || row.ThrownAway != null))
            .ExecuteDeleteAsync(stop);
        await db
            .Exercises.Where(row => row.IsDemo)
            .ExecuteUpdateAsync(row => row.SetProperty(one => one.IsDemo, false), stop);
        await db.Pieces.Where(row => row.IsDemo).ExecuteDeleteAsync(stop);
        await db.Decisions.Where(row => row.IsDemo).ExecuteDeleteAsync(stop);
    }
}
