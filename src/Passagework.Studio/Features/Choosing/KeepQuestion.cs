using System.Collections.Immutable;
using System.Text.Json;
using Passagework.Foundation;

namespace Passagework.Studio.Features.Choosing;

/// <summary>A question that was left for another.</summary>
/// <param name="Before">How it stood.</param>
/// <param name="What">What was changed, such as "general use from 100 to 60".</param>
public sealed record AskedStep(Asked Before, string What);

/// <summary>The question as it stands, with the way back.</summary>
/// <param name="Asked">Now.</param>
/// <param name="Steps">The changes that led here, the last one last.</param>
public sealed record KeptQuestion(Asked Asked, ImmutableArray<AskedStep> Steps);

/// <summary>Keeps the question at hand, so that it is there again when the page is.</summary>
internal sealed class KeepQuestion(KeptTexts texts)
{
    private const string Name = "Choose";
    private const int MostSteps = 200;

    /// <summary>The question that was kept; null where there is none, or none that can be read.</summary>
    public async Task<KeptQuestion?> Read(CancellationToken stop = default) =>
        await texts.Read(Name, stop) is { } text ? Parsed(text) : null;

    /// <summary>Keeps it; the oldest of very many steps are forgotten.</summary>
    /// <returns>Why it could not be kept; null when it is.</returns>
    public Task<Fault?> Keep(KeptQuestion question, CancellationToken stop = default)
    {
        var kept = question with { Steps = [.. question.Steps.TakeLast(MostSteps)] };
        return texts.Keep(Name, JsonSerializer.Serialize(kept, AskedJson.Options), stop);
    }

    private static KeptQuestion? Parsed(string text)
    {
        try
        {
            var kept = JsonSerializer.Deserialize<KeptQuestion>(text, AskedJson.Options);
            return kept is { Asked: not null, Steps.IsDefault: false } && AskedJson.Check(kept.Asked) is null
                ? kept with
                {
                    Steps =
                    [
                        .. kept.Steps.Where(step =>
                            step.Before is not null && AskedJson.Check(step.Before) is null
                        ),
                    ],
                }
                : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
