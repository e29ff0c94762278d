using Microsoft.EntityFrameworkCore;
using Passagework.Foundation;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features;

/// <summary>Throws something away so that it can be brought back.</summary>
internal abstract class ThrowAway<TRow>(Store store, TimeProvider time)
    where TRow : class, IThrownAway
{
    /// <summary>Throws it away.</summary>
    /// <returns>Why that could not be kept; null when it is.</returns>
    public Task<Fault?> Remove(Guid id, CancellationToken stop = default) => Set(id, time.GetUtcNow(), stop);

    /// <summary>Brings it back.</summary>
    /// <returns>Why that could not be kept; null when it is.</returns>
    public Task<Fault?> BringBack(Guid id, CancellationToken stop = default) => Set(id, null, stop);

    private Task<Fault?> Set(Guid id, DateTimeOffset? when, CancellationToken stop) =>
        Saving.Do(async () =>
        {
            await using var db = await store.Open(stop);
            if (await db.Set<TRow>().SingleOrDefaultAsync(row => row.Id == id, stop) is { } row)
            {
                row.ThrownAway = when;
                await db.SaveChangesAsync(stop);
            }
        });
}
