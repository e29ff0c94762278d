using Microsoft.EntityFrameworkCore;
using Passagework.Foundation;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Settings;

/// <summary>Keeps settings that were changed.</summary>
internal sealed class ChangeSettings(Store store)
{
    /// <summary>Applies a change to the settings as they are now.</summary>
    /// <returns>Why they could not be kept; null when they are.</returns>
    public Task<Fault?> Change(
        Func<StudioSettings, StudioSettings> change,
        CancellationToken stop = default
    ) =>
        Saving.Do(async () =>
        {
            await using var db = await store.Open(stop);
            await Set(db, change, stop);
            await db.SaveChangesAsync(stop);
        });

    /// <summary>Applies a change in a database that is open, to be saved with what else is changed there.</summary>
    public static async Task Set(
        StudioDb db,
        Func<StudioSettings, StudioSettings> change,
        CancellationToken stop
    )
    {
        var settings = change(await ReadSettings.Read(db, stop));
        var rows = await db.Settings.ToDictionaryAsync(row => row.Name, stop);
        foreach (var (name, value) in SettingsText.Written(settings))
        {
            if (rows.TryGetValue(name, out var row))
                row.Value = value;
            else
                db.Settings.Add(new SettingRow { Name = name, Value = value });
        }
    }
}
