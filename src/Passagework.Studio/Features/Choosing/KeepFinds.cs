using System.Text.Json;
using Passagework.Foundation;

namespace Passagework.Studio.Features.Choosing;

/// <summary>Keeps what the last search found until there is another, or it is thrown away.</summary>
internal sealed class KeepFinds(KeptTexts texts)
{
    private const string Name = "Finds";

    /// <summary>What was kept; null where nothing is, or nothing that can be read.</summary>
    public async Task<KeptFinds?> Read(CancellationToken stop = default) =>
        await texts.Read(Name, stop) is { } text ? Parsed(text) : null;

    /// <summary>Keeps it in place of what was kept before.</summary>
    /// <returns>Why it could not be kept; null when it is.</returns>
    public Task<Fault?> Keep(KeptFinds finds, CancellationToken stop = default) =>
        texts.Keep(Name, JsonSerializer.Serialize(finds, AskedJson.Options), stop);

    /// <summary>Forgets it.</summary>
    /// <returns>Why it is still there; null when it is gone.</returns>
    public Task<Fault?> ThrowAway(CancellationToken stop = default) => texts.Forget(Name, stop);

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
