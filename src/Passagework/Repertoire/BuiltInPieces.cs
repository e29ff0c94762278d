using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Notation;

namespace Passagework.Repertoire;

/// <summary>The built-in repertoire: pieces written for this project, see <c>docs/repertoire.md</c>.</summary>
/// <remarks>MusicXML files, read by the same reader as anyone's.</remarks>
public static class BuiltInPieces
{
    private static readonly Lazy<ImmutableArray<(string Id, Line Line)>> Loaded = new(() =>
        [.. Ids.Select(id => (id, Load(id)))]
    );

    /// <summary>Their names in files, from the easiest to the hardest.</summary>
    public static ImmutableArray<string> Ids { get; } =
    [
        "first-lamp",
        "woollen-moon",
        "the-gleaners-gate",
        "paper-lantern",
        "letter-never-posted",
        "brass-kettle-shuffle",
        "candle-on-the-sill",
        "terrace-at-four",
        "study-in-falling-water",
        "harbour-bell",
        "sunday-awning",
        "three-ducks-on-the-weir",
        "uneven-floor",
        "low-tide-at-midnight",
        "slate-roof",
        "rubber-boots",
        "corner-table",
        "long-platform",
        "washboard-road",
        "velvet-chairs",
        "tin-buttons",
        "the-clockmakers-errand",
        "iron-stair",
    ];

    /// <summary>Their notes.</summary>
    public static ImmutableArray<(string Id, Line Line)> Lines => Loaded.Value;

    private static Line Load(string id)
    {
        using var stream =
            typeof(BuiltInPieces).Assembly.GetManifestResourceStream($"Repertoire/pieces/{id}.musicxml")
            ?? throw new System.Diagnostics.UnreachableException($"There is no piece {id}.");
        using var bytes = new MemoryStream();
        stream.CopyTo(bytes);
        return MusicXml.Read(bytes.ToArray()).Then(read => LineBuilder.Build(read.Recipe)).OrThrow();
    }
}
