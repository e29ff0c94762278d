using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Passagework.Instrument;

namespace Passagework.Exercises;

/// <summary>Writes <c>layout</c>.</summary>
internal static class LayoutWriter
{
    public static JsonObject Write(Layout layout) =>
        layout switch
        {
            Layout.Box box => Numbered(Fields("box"), box.Number, box.Near),
            Layout.OneSide side => Numbered(
                Fields("one-side", ("side", RecipeWords.Sides.Of(side.High))),
                side.Number,
                side.Near
            ),
            Layout.PerString even => Fields(
                "per-string",
                ("count", even.Count),
                ("from", even.From.ToString())
            ),
            Layout.Diagonal diagonal => Fields(
                "diagonal",
                ("pattern", diagonal.Pattern.ToList()),
                ("from", diagonal.From.ToString())
            ),
            Layout.OneString single => Fields(
                "one-string",
                ("string", single.String),
                ("from", single.From),
                ("to", single.To)
            ),
            Layout.Joined joined => Near(
                Fields("joined", ("boxes", new JsonArray(joined.First, joined.Second))),
                joined.Near
            ),
            Layout.StringPair pair => Blocks("string-pair", pair.Strings, pair.Boxes, pair.Near),
            Layout.Chain chain => Blocks("chain", chain.Strings, chain.Boxes, chain.Near),
            Layout.OpenPosition => Fields("open"),
            Layout.Given given => Fields("places", ("places", Texts(given.Places))),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    private static JsonObject Fields(string kind, params ReadOnlySpan<(string Name, JsonNode Value)> values)
    {
        var fields = new JsonObject { ["kind"] = kind };
        foreach (var (name, value) in values)
        {
            fields[name] = value;
        }

        return fields;
    }

    private static JsonArray Texts(ImmutableArray<Place> places) =>
        new([.. places.Select(place => (JsonNode)place.ToString())]);

    private static JsonObject Blocks(
        string kind,
        ImmutableArray<int> strings,
        ImmutableArray<int> boxes,
        int near
    ) => Near(Fields(kind, ("strings", strings.ToList()), ("boxes", boxes.ToList())), near);

    private static JsonObject Numbered(JsonObject fields, int number, int near)
    {
        fields.PutUnless("number", number, 1);
        return Near(fields, near);
    }

    private static JsonObject Near(JsonObject fields, int near)
    {
        fields.PutUnless("near", near, LayoutReader.UsualNear);
        return fields;
    }
}
