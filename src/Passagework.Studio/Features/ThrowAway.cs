using Microsoft.EntityFrameworkCore;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features;

/// <summary>Throws something away so that it can be brought back.</summary>
internal abstract class ThrowAway<TRow>(Store store, TimeProvider time)
    where TRow : class, IThrownAway
{
    /// <summary>Throws it away.</summary>
    public Task Remove(Guid id, CancellationToken stop = default) => Set(id, time.GetUtcNow(), stop);

    /// <summary>Brings it back.</summary>
    public Task BringBack(Guid id, CancellationToken stop = default) => Set(id, null, stop);

    private async Task Set(Guid id, DateTimeOffset? when, CancellationToken stop)
    {
        await using var db = await store.Open(stop);
        if (await db.Set<TRow>().SingleOrDefaultAsync(row => row.Id == id, stop) is { } row)
        {
            row.ThrownAway = when;
            await db.SaveChangesAsync(stop);
        }
    }
}
