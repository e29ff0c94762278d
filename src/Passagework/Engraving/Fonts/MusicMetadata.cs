using System.Collections.Immutable;
using System.Text.Json;

namespace Passagework.Engraving.Fonts;

/// <summary>What the music font's own metadata file says (SMuFL, "Font-specific metadata").</summary>
internal sealed class MusicMetadata
{
    private static readonly ImmutableDictionary<string, (double X, double Y)> None = ImmutableDictionary<
        string,
        (double X, double Y)
    >.Empty;

    private readonly Dictionary<string, ImmutableDictionary<string, (double X, double Y)>> _anchors = [];

    private MusicMetadata() { }

    /// <summary>Lengths to draw lines with, in staff spaces.</summary>
    public Dictionary<string, double> Defaults { get; } = [];

    /// <summary>Reads the lengths, and the anchors of the glyphs that are used.</summary>
    public static MusicMetadata Read(byte[] json, IReadOnlySet<string> glyphs)
    {
        var facts = new MusicMetadata();
        using var file = JsonDocument.Parse(json);
        foreach (var length in file.RootElement.GetProperty("engravingDefaults").EnumerateObject())
        {
            if (length.Value.ValueKind == JsonValueKind.Number)
                facts.Defaults[length.Name] = length.Value.GetDouble();
        }

        foreach (var glyph in file.RootElement.GetProperty("glyphsWithAnchors").EnumerateObject())
        {
            if (glyphs.Contains(glyph.Name))
                facts._anchors[glyph.Name] = Anchors(glyph.Value);
        }

        return facts;
    }

    public ImmutableDictionary<string, (double X, double Y)> AnchorsOf(string glyph) =>
        _anchors.GetValueOrDefault(glyph, None);

    private static ImmutableDictionary<string, (double X, double Y)> Anchors(JsonElement glyph) =>
        glyph
            .EnumerateObject()
            .ToImmutableDictionary(
                anchor => anchor.Name,
                anchor => (anchor.Value[0].GetDouble(), anchor.Value[1].GetDouble())
            );
}
