using System.Text.Json;
using Microsoft.EntityFrameworkCore;
using Passagework.Foundation;
using Passagework.Studio.Data;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Features.Choosing;

/// <summary>Keeps what the last search found until there is another, or it is thrown away.</summary>
internal sealed class KeepFinds(Store store)
{
    private const string Name = "Finds";

    /// <summary>What was kept; null where nothing is, or nothing that can be read.</summary>
    public async Task<KeptFinds?> Read(CancellationToken stop = default)
    {
        await using var db = await store.Open(stop);
        var row = await db.Settings.AsNoTracking().SingleOrDefaultAsync(one => one.Name == Name, stop);
        return row is null ? null : Parsed(row.Value);
    }

    /// <summary>Keeps it in place of what was kept before.</summary>
    /// <returns>Why it could not be kept; null when it is.</returns>
    public Task<Fault?> Keep(KeptFinds finds, CancellationToken stop = default) =>
        Saving.Do(async () =>
        {
            var value = JsonSerializer.Serialize(finds, AskedJson.Options);
            await using var db = await store.Open(stop);
            if (await db.Settings.SingleOrDefaultAsync(one => one.Name == Name, stop) is { } row)
                row.Value = value;
            else
                db.Settings.Add(new SettingRow { Name = Name, Value = value });

            await db.SaveChangesAsync(stop);
        });

    /// <summary>Forgets it.</summary>
    /// <returns>Why it is still there; null when it is gone.</returns>
    public Task<Fault?> ThrowAway(CancellationToken stop = default) =>
        Saving.Do(async () =>
        {
            await using var db = await store.Open(stop);
            await db.Settings.Where(one => one.Name == Name).ExecuteDeleteAsync(stop);
        });

    private static KeptFinds? Parsed(string text)
    {
        try
        {
            var kept = JsonSerializer.Deserialize<KeptFinds>(text, AskedJson.Options);
            return
                kept is { Wish.Boxes.IsDefault: false, Found.IsDefault: false, Asked: not null }
                && AskedJson.Check(kept.Asked) is null
                && kept.Found.All(find =>
                    !find.Values.IsDefault
                    && find.Values.Length >= FindNewExercises.TellingApart.Length
                    && kept.NameOf(find, default).TryGet(out _, out _)
                )
                ? kept
                : null;
        }
        catch (Exception wrong)
            when (wrong is JsonException or NotSupportedException or InvalidOperationException)
        {
            return null;
        }
    }
}
