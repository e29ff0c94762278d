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
        var saved = await db
            .Settings.AsNoTracking()
            .ToDictionaryAsync(row => row.Name, row => row.Value, stop);
        return SettingsText.Read(name => saved.GetValueOrDefault(name));
    }
}
