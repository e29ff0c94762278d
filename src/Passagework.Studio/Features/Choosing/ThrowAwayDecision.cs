using Microsoft.EntityFrameworkCore;
using Passagework.Foundation;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Choosing;

/// <summary>Throws a decision away; it can be brought back while the page that did it is open.</summary>
internal sealed class ThrowAwayDecision(Store store)
{
    /// <summary>Throws it away.</summary>
    /// <returns>What brings it back; a fault where it is gone already, or stays because the disk fails.</returns>
    public async Task<Outcome<ThrownAway>> ThrowAway(Guid id, CancellationToken stop = default)
    {
        ThrownAway? thrown = null;
        var fault = await Saving.Do(async () =>
        {
            await using var db = await store.Open(stop);
            if (await db.Decisions.SingleOrDefaultAsync(row => row.Id == id, stop) is { } row)
            {
                db.Decisions.Remove(row);
                await db.SaveChangesAsync(stop);
                thrown = new ThrownAway(row.Title, store, row);
            }
        });
        return (fault, thrown) switch
        {
            ({ } failed, _) => failed,
            (_, { } gone) => gone,
            _ => new Fault("the decision was thrown away on another page"),
        };
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
