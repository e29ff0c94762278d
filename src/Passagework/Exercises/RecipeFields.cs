using System.Collections.Immutable;

namespace Passagework.Exercises;

/// <summary>The field names of a recipe file, object by object, in the order in which they are written.</summary>
internal static class RecipeFields
{
    public static readonly ImmutableArray<string> Recipe =
    [
        "passagework",
        "id",
        "title",
        "purpose",
        "notes",
        "instrument",
        "layout",
        "cell",
        "movement",
        "rhythm",
        "picking",
        "fretting",
        "written",
    ];

    public static readonly ImmutableArray<string> Notes = ["root", "scale"];

    public static readonly ImmutableArray<string> Instrument =
    [
        "tuning",
        "frets",
        "capo",
        "scaleLengthMm",
        "stringSpacingMm",
    ];

    public static readonly ImmutableArray<string> Cell =
    [
        "offsets",
        "accents",
        "durations",
        "slurs",
        "sound",
    ];

    public static readonly ImmutableArray<string> Movement =
    [
        "step",
        "direction",
        "from",
        "to",
        "repeat",
        "turn",
        "ending",
    ];

    public static readonly ImmutableArray<string> Rhythm =
    [
        "notesPerBeat",
        "pattern",
        "meter",
        "swing",
        "startOffset",
        "tempo",
    ];

    public static readonly ImmutableArray<string> Picking = ["technique", "first", "fingers"];

    public static readonly ImmutableArray<string> Fretting = ["locks", "avoid", "slides"];

    public static readonly ImmutableArray<string> Lock = ["note", "finger", "string", "position", "stroke"];

    public static readonly ImmutableArray<string> Written =
    [
        "place",
        "pitch",
        "with",
        "rest",
        "duration",
        "group",
        "accent",
        "slur",
    ];

    /// <summary>The kinds of layout, and the fields of each besides <c>kind</c>.</summary>
    public static readonly ImmutableArray<(string Kind, ImmutableArray<string> Fields)> Layouts =
    [
        ("box", ["number", "near"]),
        ("per-string", ["count", "from"]),
        ("joined", ["boxes", "near"]),
        ("diagonal", ["pattern", "from"]),
        ("one-string", ["string", "from", "to"]),
        ("string-pair", ["strings", "boxes", "near"]),
        ("chain", ["strings", "boxes", "near"]),
        ("one-side", ["side", "number", "near"]),
        ("open", []),
        ("places", ["places"]),
    ];
}
