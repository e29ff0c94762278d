using System.Collections.Immutable;
using System.Text.Json;
using Passagework.Foundation;

namespace Passagework.Sound.Takes;

/// <summary>
/// Takes with names: one for each fault, a faultless one, and one for each student of the invented Saltmarsh Guitar Room.
/// </summary>
public static class DemoTakes
{
    private const string File = "Sound/Takes/demo-takes.json";

    private static readonly Lazy<ImmutableArray<TakeIdea>> Loaded = new(Load);

    /// <summary>All of them, in the order of their file.</summary>
    public static ImmutableArray<TakeIdea> All => Loaded.Value;

    private static ImmutableArray<TakeIdea> Load()
    {
        using var stream =
            typeof(DemoTakes).Assembly.GetManifestResourceStream(File)
            ?? throw new System.Diagnostics.UnreachableException($"There is no {File}.");
        using var document = JsonDocument.Parse(stream);
        var faults = new FirstFault();
        var ideas = new JsonCursor(document.RootElement, "$", faults).List(TakeIdeaJson.Read);
        return faults.Fault is { } fault
            ? throw new System.Diagnostics.UnreachableException($"{File}: {fault}")
            : ideas;
    }
}
