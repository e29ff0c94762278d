using Microsoft.EntityFrameworkCore;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Settings;

/// <summary>Keeps settings that were changed.</summary>
internal sealed class ChangeSettings(Store store, ReadSettings read)
{
    /// <summary>Applies a change to the settings as they are now.</summary>
    /// <returns>The settings afterwards.</returns>
    public async Task<StudioSettings> Change(
        Func<StudioSettings, StudioSettings> change,
        CancellationToken stop = default
    )
    {
        var settings = change(await read.Read(stop));
        await using var db = await store.Open(stop);
        var rows = await db.Settings.ToDictionaryAsync(row => row.Name, stop);
        foreach (var (name, value) in SettingsText.Written(settings))
        {
            if (rows.TryGetValue(name, out var row))
                row.Value = value;
            else
                db.Settings.Add(new SettingRow { Name = name, Value = value });
        }

        await db.SaveChangesAsync(stop);
        return settings;
    }
}
