using Microsoft.EntityFrameworkCore;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Pieces;

/// <summary>Takes an own piece off the list; it can be brought back.</summary>
internal sealed class ThrowAwayPiece(Store store, TimeProvider time)
{
    /// <summary>Throws it away.</summary>
    public Task ThrowAway(Guid id, CancellationToken stop = default) => Set(id, time.GetUtcNow(), stop);

    /// <summary>Brings it back.</summary>
    public Task BringBack(Guid id, CancellationToken stop = default) => Set(id, null, stop);

    private async Task Set(Guid id, DateTimeOffset? when, CancellationToken stop)
    {
        await using var db = await store.Open(stop);
        var row = await db.Pieces.SingleOrDefaultAsync(one => one.Id == id, stop);
        if (row is not null)
        {
            row.ThrownAway = when;
            await db.SaveChangesAsync(stop);
        }
    }
}
