using Microsoft.EntityFrameworkCore;
using Passagework.Foundation;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features;

/// <summary>One text under each name, such as the question at hand: there again when its page is.</summary>
internal sealed class KeptTexts(Store store)
{
    /// <summary>The text of a name; null where none is kept.</summary>
    public async Task<string?> Read(string name, CancellationToken stop)
    {
        await using var db = await store.Open(stop);
        var row = await db.Settings.AsNoTracking().SingleOrDefaultAsync(one => one.Name == name, stop);
        return row?.Value;
    }

    /// <summary>Keeps a text in place of the one before.</summary>
    /// <returns>Why it could not be kept; null when it is.</returns>
    public Task<Fault?> Keep(string name, string text, CancellationToken stop) =>
        Saving.Do(async () =>
        {
            await using var db = await store.Open(stop);
            if (await db.Settings.SingleOrDefaultAsync(one => one.Name == name, stop) is { } row)
                row.Value = text;
            else
                db.Settings.Add(new SettingRow { Name = name, Value = text });

            await db.SaveChangesAsync(stop);
        });

    /// <summary>Forgets it.</summary>
    /// <returns>Why it is still there; null when it is gone.</returns>
    public Task<Fault?> Forget(string name, CancellationToken stop) =>
        Saving.Do(async () =>
        {
            await using var db = await store.Open(stop);
            await db.Settings.Where(one => one.Name == name).ExecuteDeleteAsync(stop);
        });
}
