using System.Collections.Immutable;
using System.Text.Json;

namespace Passagework.Foundation;

/// <summary>The fields of one JSON object; names that do not belong are refused.</summary>
internal sealed class JsonFields
{
    private readonly JsonCursor _owner;
    private readonly Dictionary<string, JsonCursor> _fields = [];

    private JsonFields(JsonCursor owner) => _owner = owner;

    /// <summary>The object at a cursor, with the names that it may hold.</summary>
    public static JsonFields Of(JsonCursor owner, ImmutableArray<string> known)
    {
        var fields = Of(owner);
        foreach (var name in fields._fields.Keys)
        {
            if (!known.Contains(name))
            {
                fields.RefuseField(name, known);
            }
        }

        return fields;
    }

    /// <summary>The object at a cursor; whether its names belong is still to be seen.</summary>
    public static JsonFields Of(JsonCursor owner)
    {
        var fields = new JsonFields(owner);
        if (owner.Element.ValueKind != JsonValueKind.Object)
        {
            owner.Refuse($"{owner.Seen} is no object", "fields in braces: { … }");
            return fields;
        }

        foreach (var property in owner.Element.EnumerateObject())
        {
            var path = $"{owner.Path}.{Quote.Short(property.Name).Trim('\'')}";
            var field = new JsonCursor(property.Value, path, owner.Faults);
            fields._fields[property.Name] = field;
            if (field.IsNull)
            {
                field.Refuse("null says nothing", "leave the field out");
            }
        }

        return fields;
    }

    /// <summary>The names in the order of the file.</summary>
    public IEnumerable<string> Names => _fields.Keys;

    /// <summary>Whether a field is there.</summary>
    public bool Has(string name) => _fields.ContainsKey(name);

    /// <summary>A field that must be there; where it is missing, null.</summary>
    public JsonCursor? Required(string name, string example)
    {
        if (Optional(name) is { } field)
        {
            return field;
        }

        _owner.Refuse($"the field '{name}' is missing", example);
        return null;
    }

    /// <summary>Requires the mark of the first version of a file format.</summary>
    public void RequireFirstVersion()
    {
        if (Required("passagework", "\"passagework\": 1") is { } version && version.Whole() != 1)
        {
            version.Refuse($"unknown version {version.Seen}", "1");
        }
    }

    /// <summary>A field, null where it is left out.</summary>
    public JsonCursor? Optional(string name) => _fields.TryGetValue(name, out var field) ? field : null;

    /// <summary>Refuses a name, suggesting the nearest of those that belong.</summary>
    public void RefuseField(string name, ImmutableArray<string> known) =>
        _fields[name].Refuse($"unknown field {Quote.Short(name)}", NearestWord.Hint(name, known));
}
