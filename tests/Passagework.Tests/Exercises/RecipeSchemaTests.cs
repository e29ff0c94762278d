using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Text.Json.Nodes;
using Passagework.Exercises;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Tests.Exercises;

/// <summary>The published schema and the reader name the same fields and words.</summary>
public class RecipeSchemaTests
{
    private static readonly JsonNode Schema = Load();

    [Theory]
    [InlineData("", nameof(RecipeFields.Recipe))]
    [InlineData("notes", nameof(RecipeFields.Notes))]
    [InlineData("instrument", nameof(RecipeFields.Instrument))]
    [InlineData("cell", nameof(RecipeFields.Cell))]
    [InlineData("movement", nameof(RecipeFields.Movement))]
    [InlineData("rhythm", nameof(RecipeFields.Rhythm))]
    [InlineData("picking", nameof(RecipeFields.Picking))]
    [InlineData("fretting", nameof(RecipeFields.Fretting))]
    [InlineData("lock", nameof(RecipeFields.Lock))]
    [InlineData("writtenEntry", nameof(RecipeFields.Written))]
    public void Objects_have_the_fields_that_the_reader_knows(string definition, string list)
    {
        var known =
            (ImmutableArray<string>)(
                typeof(RecipeFields).GetField(list)?.GetValue(null) ?? default(ImmutableArray<string>)
            );
        var described = definition.Length == 0 ? Schema : At("$defs", definition);

        Assert.Equal(known, Names(described));
        Assert.False(At(described, "additionalProperties").GetValue<bool>());
    }

    [Fact]
    public void Layouts_have_the_kinds_and_fields_that_the_reader_knows()
    {
        var described = At("$defs", "layout", "oneOf")
            .AsArray()
            .Select(kind =>
                $"{At(kind, "properties", "kind", "const")}: {string.Join(' ', Names(kind).Where(name => name != "kind"))}"
            );

        Assert.Equal(
            RecipeFields.Layouts.Select(layout => $"{layout.Kind}: {string.Join(' ', layout.Fields)}"),
            described
        );
    }

    public static TheoryData<string, string[]> Words() =>
        new()
        {
            { "picking/properties/technique/enum", [.. RecipeWords.Techniques.Words] },
            { "picking/properties/first/enum", [.. RecipeWords.FirstStrokes.Words] },
            { "picking/properties/fingers/enum", [.. RecipeWords.FingerOrders.Words] },
            { "movement/properties/direction/enum", [.. RecipeWords.Directions.Words] },
            { "movement/properties/turn/enum", [.. RecipeWords.Turns.Words] },
            { "movement/properties/ending/enum", [.. RecipeWords.Endings.Words] },
            { "cell/properties/sound/enum", [.. RecipeWords.Sounds.Words] },
            { "cell/properties/slurs/oneOf/0/enum", [.. RecipeWords.CellSlurWords.Words] },
            { "fretting/properties/slides/enum", [.. RecipeWords.Slides.Words] },
            { "lock/properties/stroke/enum", [.. RecipeWords.Strokes.Words] },
            { "writtenEntry/properties/slur/enum", [.. RecipeWords.Slurs.Words] },
            { "layout/oneOf/7/properties/side/enum", [.. RecipeWords.Sides.Words] },
            { "notes/properties/scale/oneOf/0/enum", [.. Scales.All.Select(scale => scale.Name)] },
            { "instrument/properties/tuning/anyOf/0/enum", [.. Tuning.Names] },
        };

    [Theory]
    [MemberData(nameof(Words))]
    public void Values_have_the_words_that_the_reader_knows(string path, string[] known) =>
        Assert.Equal(
            known,
            At(["$defs", .. path.Split('/')]).AsArray().Select(word => word?.GetValue<string>())
        );

    [Fact]
    public void Every_list_of_words_in_the_schema_is_compared() =>
        Assert.Equal(Words().Count, CountEnums(Schema));

    private static int CountEnums(JsonNode? node) =>
        node switch
        {
            JsonObject fields => fields.Sum(field => (field.Key == "enum" ? 1 : 0) + CountEnums(field.Value)),
            JsonArray items => items.Sum(CountEnums),
            _ => 0,
        };

    private static IEnumerable<string> Names(JsonNode? described) =>
        At(described, "properties").AsObject().Select(property => property.Key);

    private static JsonNode At(params ReadOnlySpan<string> path) => At(Schema, path);

    private static JsonNode At(JsonNode? node, params ReadOnlySpan<string> path)
    {
        foreach (var name in path)
        {
            node = node is JsonArray items
                ? items[int.Parse(name, System.Globalization.CultureInfo.InvariantCulture)]
                : node?[name];
        }

        return node
            ?? throw new InvalidOperationException($"no {string.Join('/', path.ToArray())} in the schema");
    }

    private static JsonNode Load([CallerFilePath] string thisFile = "")
    {
        var root = new FileInfo(thisFile).Directory?.Parent?.Parent?.Parent?.FullName ?? "";
        var text = File.ReadAllText(System.IO.Path.Combine(root, "docs", "recipe.schema.json"));
        return JsonNode.Parse(text) ?? throw new InvalidOperationException("the schema is empty");
    }
}
