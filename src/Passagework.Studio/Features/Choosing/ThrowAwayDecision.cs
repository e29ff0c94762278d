using Microsoft.EntityFrameworkCore;
using Passagework.Foundation;
using Passagework.Studio.Data;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Features.Choosing;

/// <summary>Throws a decision away; it can be brought back while the page that did it is open.</summary>
internal sealed class ThrowAwayDecision(Store store)
{
    /// <summary>Throws it away.</summary>
    /// <returns>What brings it back; null where it is gone already.</returns>
    public async Task<ThrownAway?> ThrowAway(Guid id, CancellationToken stop = default)
    {
        await using var db = await store.Open(stop);
        if (await db.Decisions.SingleOrDefaultAsync(row => row.Id == id, stop) is not { } row)
        {
            return null;
        }

        db.Decisions.Remove(row);
        await db.SaveChangesAsync(stop);
        return new ThrownAway(row.Title, store, row);
    }

    /// <summary>A decision that was thrown away.</summary>
    internal sealed class ThrownAway(string title, Store store, DecisionRow row)
    {
        /// <summary>The title of its exercise.</summary>
        public string Title => title;

        /// <summary>Brings it back as it was.</summary>
        /// <returns>Why it could not be brought back; null when it is there.</returns>
        public Task<Fault?> BringBack() =>
            Saving.Do(async () =>
            {
                await using var db = await store.Open();
                db.Decisions.Add(row);
                await db.SaveChangesAsync();
            });
    }
}
