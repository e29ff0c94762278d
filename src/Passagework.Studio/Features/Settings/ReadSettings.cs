using Microsoft.EntityFrameworkCore;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Settings;

/// <summary>Reads the settings.</summary>
internal sealed class ReadSettings(Store store)
{
    /// <summary>All of them.</summary>
    public async Task<StudioSettings> Read(CancellationToken stop = default)
    {
        await using var db = await store.Open(stop);
        return await Read(db, stop);
    }

    /// <summary>All of them as they stand in a database that is open.</summary>
    public static async Task<StudioSettings> Read(StudioDb db, CancellationToken stop)
    {
        var saved = await db
            .Settings.AsNoTracking()
            .ToDictionaryAsync(row => row.Name, row => row.Value, stop);
        return SettingsText.Read(name => saved.GetValueOrDefault(name));
    }
}
