using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Text.Json;

namespace Passagework.Hands;

/// <summary>The one file in which every number of the hands model stands, with its mark and source.</summary>
public static class ParameterFile
{
    private const string ResourceName = "Hands/hands-parameters.json";

    static ParameterFile()
    {
        using var stream =
            typeof(ParameterFile).Assembly.GetManifestResourceStream(ResourceName)
            ?? throw new InvalidOperationException($"The engine was built without {ResourceName}.");
        using var document = JsonDocument.Parse(stream);
        var root = document.RootElement;
        Parameters = [.. root.GetProperty("parameters").EnumerateArray().Select(ReadParameter)];
        Constants = [.. root.GetProperty("constants").EnumerateArray().Select(ReadConstant)];
        ById = Constants.ToFrozenDictionary(constant => constant.Id, constant => constant.Value);
    }

    /// <summary>The parameters of a player, in the order in which joint draws are made.</summary>
    public static ImmutableArray<Parameter> Parameters { get; }

    /// <summary>The constants of the model.</summary>
    public static ImmutableArray<Constant> Constants { get; }

    private static FrozenDictionary<string, double> ById { get; }

    internal static double Constant(string id) => ById[id];

    private static Parameter ReadParameter(JsonElement entry) =>
        new(
            Text(entry, "id"),
            Text(entry, "unit"),
            Text(entry, "meaning"),
            [.. entry.GetProperty("values").EnumerateArray().Select(value => value.GetDouble())],
            MarkOf(entry),
            entry.GetProperty("spread").GetDouble(),
            Text(entry, "source"),
            entry.TryGetProperty("floor", out var floor) ? floor.GetDouble() : null
        );

    private static Constant ReadConstant(JsonElement entry) =>
        new(
            Text(entry, "id"),
            entry.GetProperty("value").GetDouble(),
            Text(entry, "unit"),
            Text(entry, "meaning"),
            MarkOf(entry),
            Text(entry, "source")
        );

    private static string Text(JsonElement entry, string name) => entry.GetProperty(name).GetString() ?? "";

    private static Provenance MarkOf(JsonElement entry) =>
        Text(entry, "mark") switch
        {
            "published" => Provenance.Published,
            "derived" => Provenance.Derived,
            "common practice" => Provenance.CommonPractice,
            "assumed" => Provenance.Assumed,
            var other => throw new InvalidOperationException($"Unknown mark '{other}' in {ResourceName}."),
        };
}
