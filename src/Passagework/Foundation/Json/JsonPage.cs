using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Passagework.Foundation;

/// <summary>Prints JSON for reading: what fits on a line stands on one, the rest is broken and indented.</summary>
public static class JsonPage
{
    private const int Width = 110;

    // Titles in any language stay readable; the text is no part of a web page.
    private static readonly JsonSerializerOptions Readable = new()
    {
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The text, with a new line at its end. The outermost object is always broken.</summary>
    public static string Print(JsonObject page)
    {
        var text = new StringBuilder();
        Broken(page, 0, text);
        return text.Append('\n').ToString();
    }

    private static void Append(JsonNode? node, int indent, StringBuilder text)
    {
        var inline = Inline(node);
        if (node is JsonValue or null || indent + inline.Length <= Width)
        {
            text.Append(inline);
        }
        else
        {
            Broken(node, indent, text);
        }
    }

    private static void Broken(JsonNode node, int indent, StringBuilder text)
    {
        var (open, close) = node is JsonObject ? ('{', '}') : ('[', ']');
        text.Append(open);
        var first = true;
        foreach (var (name, value) in Parts(node))
        {
            text.Append(first ? "\n" : ",\n").Append(' ', indent + 2);
            if (name is not null)
            {
                text.Append(Name(name));
            }

            Append(value, indent + 2, text);
            first = false;
        }

        text.Append('\n').Append(' ', indent).Append(close);
    }

    private static string Inline(JsonNode? node) =>
        node switch
        {
            JsonObject { Count: 0 } => "{}",
            JsonObject fields => $"{{ {Joined(fields)} }}",
            JsonArray items => $"[{Joined(items)}]",
            null => "null",
            _ => node.ToJsonString(Readable),
        };

    private static string Joined(JsonNode node) =>
        string.Join(
            ", ",
            Parts(node).Select(part => (part.Name is { } name ? Name(name) : "") + Inline(part.Value))
        );

    private static string Name(string name) => JsonSerializer.Serialize(name, Readable) + ": ";

    private static IEnumerable<(string? Name, JsonNode? Value)> Parts(JsonNode node) =>
        node is JsonObject fields
            ? fields.Select(field => ((string?)field.Key, field.Value))
            : node.AsArray().Select(item => ((string?)null, item));
}
