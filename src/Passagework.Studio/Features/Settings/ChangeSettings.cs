using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Passagework.Foundation;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Settings;

/// <summary>Keeps settings that were changed.</summary>
internal sealed class ChangeSettings(Store store, ReadSettings read)
{
    /// <summary>Applies a change to the settings as they are now.</summary>
    /// <returns>Why they could not be kept; null when they are.</returns>
    public Task<Fault?> Change(
        Func<StudioSettings, StudioSettings> change,
        CancellationToken stop = default
    ) =>
        Saving.Do(async () =>
        {
            var settings = change(await read.Read(stop));
            await using var db = await store.Open(stop);
            var rows = await db.Settings.ToDictionaryAsync(row => row.Name, stop);
            foreach (var (name, value) in Written(settings))
            {
                if (rows.TryGetValue(name, out var row))
                    row.Value = value;
                else
                    db.Settings.Add(new SettingRow { Name = name, Value = value });
            }

            await db.SaveChangesAsync(stop);
        });

    private static IEnumerable<(string Name, string Value)> Written(StudioSettings settings) =>
        [
            (nameof(settings.Room), settings.Room),
            (nameof(settings.Teacher), settings.Teacher),
            (nameof(settings.Level), settings.Level.ToString(CultureInfo.InvariantCulture)),
            (nameof(settings.Theme), settings.Theme.ToString()),
            (nameof(settings.IsNewcomer), settings.IsNewcomer.ToString()),
            (nameof(settings.DemoWasInstalled), settings.DemoWasInstalled.ToString()),
        ];
}
