using System.Text.Json;

namespace Passagework.Tests.Outside;

/// <summary>What the npm package "tonal" says, asked once through node.</summary>
internal static class TheoryLibrary
{
    private static readonly Lazy<JsonDocument> Answer = new(() => NodeScript.Ask("theory.mjs", "tonal"));

    /// <summary>All that it says.</summary>
    public static JsonElement Said => Answer.Value.RootElement;
}
