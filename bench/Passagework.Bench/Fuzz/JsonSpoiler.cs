using System.Text.Json.Nodes;

namespace Passagework.Bench.Fuzz;

/// <summary>Spoils the values of a JSON text and leaves its form alone, so that what lies behind the parser is reached.</summary>
internal static class JsonSpoiler
{
    private const int MostChanges = 3;
    private static readonly string[] Values =
    [
        "0",
        "1",
        "-1",
        "2",
        "3",
        "5",
        "7",
        "8",
        "12",
        "16",
        "36",
        "2147483647",
        "1e300",
        "0.5",
        "0.62",
        "null",
        "true",
        "[]",
        "{}",
        "[0]",
        "[0,1,2]",
        "[0,null,-3]",
        "\"\"",
        "\"1/7\"",
        "\"1/9223372036854775807\"",
        "\"6:5\"",
        "\"8:36\"",
        "\"A\"",
        "\"Cb\"",
        "\"chromatic\"",
        "\"diminished seventh\"",
        "\"minor blues\"",
        "\"bass\"",
        "\"eight-string\"",
        "\"all fourths\"",
        "\"G4 C4 E4 A4\"",
        "\"box\"",
        "\"joined\"",
        "\"open\"",
        "\"down-and-up\"",
        "\"hold-root\"",
        "\"fill-bar\"",
        "\"rake\"",
        "\"fingers\"",
        "\"hybrid\"",
        "\"metric\"",
        "\"7/8\"",
        "\"6/8\"",
        "\"same-string\"",
        "\"hammer\"",
        "\"none\"",
    ];

    /// <summary>The text with one to three values exchanged, doubled or taken out.</summary>
    public static string Spoil(string json, Random random)
    {
        var page = JsonNode.Parse(json) ?? new JsonObject();
        for (var changes = 1 + random.Next(MostChanges); changes > 0; changes--)
        {
            var holders = Holders(page).ToArray();
            if (holders.Length > 0)
            {
                Change(holders[random.Next(holders.Length)], random);
            }
        }

        return page.ToJsonString();
    }

    private static IEnumerable<JsonNode> Holders(JsonNode node)
    {
        if (node is JsonObject { Count: > 0 } or JsonArray { Count: > 0 })
        {
            yield return node;
        }

        var children = node switch
        {
            JsonObject fields => fields.Select(field => field.Value),
            JsonArray items => items,
            _ => [],
        };
        foreach (var deeper in children.OfType<JsonNode>().SelectMany(Holders))
        {
            yield return deeper;
        }
    }

    private static void Change(JsonNode holder, Random random)
    {
        var value = JsonNode.Parse(Values[random.Next(Values.Length)]);
        var remove = random.Next(8) == 0;
        switch (holder)
        {
            case JsonObject fields:
                var name = fields.ElementAt(random.Next(fields.Count)).Key;
                if (remove)
                {
                    fields.Remove(name);
                }
                else
                {
                    fields[name] = value;
                }

                break;
            case JsonArray items:
                var at = random.Next(items.Count);
                if (remove)
                {
                    items.RemoveAt(at);
                }
                else if (random.Next(3) == 0)
                {
                    items.Insert(at, items[at]?.DeepClone());
                }
                else
                {
                    items[at] = value;
                }

                break;
        }
    }
}
