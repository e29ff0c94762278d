using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Settings;

/// <summary>Reads the settings; one that is missing or cannot be read has its usual value.</summary>
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
        var usual = new StudioSettings();
        return new StudioSettings
        {
            Room = saved.GetValueOrDefault(nameof(usual.Room), usual.Room),
            Teacher = saved.GetValueOrDefault(nameof(usual.Teacher), usual.Teacher),
            Level = Level(saved.GetValueOrDefault(nameof(usual.Level))) ?? usual.Level,
            Theme = Word(saved.GetValueOrDefault(nameof(usual.Theme)), usual.Theme),
            IsNewcomer = Flag(saved.GetValueOrDefault(nameof(usual.IsNewcomer)), usual.IsNewcomer),
            DemoWasInstalled = Flag(
                saved.GetValueOrDefault(nameof(usual.DemoWasInstalled)),
                usual.DemoWasInstalled
            ),
        };
    }

    private static double? Level(string? text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var level)
        && level is >= 0 and <= 4
            ? level
            : null;

    private static T Word<T>(string? text, T usual)
        where T : struct, Enum => Enum.TryParse<T>(text, out var word) && Enum.IsDefined(word) ? word : usual;

    private static bool Flag(string? text, bool usual) => bool.TryParse(text, out var flag) ? flag : usual;
}
