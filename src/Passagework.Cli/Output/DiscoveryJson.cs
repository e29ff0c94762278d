using System.Text.Json.Nodes;
using Passagework.Choosing.Discovery;
using Passagework.Choosing.Measures;
using Passagework.Exercises;

namespace Passagework.Cli.Output;

/// <summary>What a search found, for machines.</summary>
internal static class DiscoveryJson
{
    private const string Words = "tooWide double unplayable rolls stretch ceiling";

    public static JsonObject Of(DiscoveryResult result, Anchors anchors, string player, double seconds)
    {
        var removed = new JsonObject();
        foreach (var (word, reason) in Words.Split(' ').Zip(Enum.GetValues<Removal>()))
        {
            removed[word] = result.Removed[reason];
        }

        return new JsonObject
        {
            ["player"] = player,
            ["visited"] = result.Visited,
            ["total"] = result.Total,
            ["complete"] = result.Complete,
            ["seconds"] = Rounded.Milliseconds(seconds),
            ["front"] = result.Front,
            ["alike"] = result.Equal,
            ["removed"] = removed,
            ["found"] = new JsonArray([.. result.Found.Select(JsonNode (found) => FoundOf(found, anchors))]),
        };
    }

    private static JsonObject FoundOf(FoundCell found, Anchors anchors) =>
        new()
        {
            ["name"] = found.Name,
            ["recipe"] = JsonNode.Parse(RecipeJson.Write(found.Recipe)),
            ["library"] = found.LibraryId,
            ["values"] = new JsonArray([
                .. RawMeasures.Criteria.Select(
                    JsonNode (id, k) =>
                        new JsonObject
                        {
                            ["criterion"] = id,
                            ["raw"] = Rounded.Figure(found.Raw[k]),
                            ["value"] = Rounded.Figure(found.Values[k]),
                            ["error"] = found.Raw[k] is null
                                ? null
                                : Rounded.Figure(found.Errors[k] * WidthOf(anchors, id)),
                            ["valueError"] = found.Raw[k] is null ? null : Rounded.Figure(found.Errors[k]),
                            ["missing"] = found.Raw[k] is null,
                        }
                ),
            ]),
        };

    // From 0 to 1 in the criterion's own unit.
    private static double WidthOf(Anchors anchors, string criterion) =>
        anchors.Of(criterion) is { } anchor ? Math.Abs(anchor.One - anchor.Zero) : 1;
}
