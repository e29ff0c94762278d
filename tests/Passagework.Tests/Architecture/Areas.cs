using System.Collections.Immutable;

namespace Passagework.Tests.Architecture;

/// <summary>Who may use whom in the engine; one place, read by the rules beside it.</summary>
internal static class Areas
{
    /// <summary>Each area with the areas it may use, in the order of the design: only ones above it.</summary>
    public static readonly ImmutableArray<(string Area, string[] MayUse)> All =
    [
        ("Foundation", []),
        ("Theory", ["Foundation"]),
        ("Rhythm", ["Foundation"]),
        ("Instrument", ["Theory", "Foundation"]),
        ("Exercises", ["Instrument", "Theory", "Rhythm", "Foundation"]),
        ("Hands", ["Exercises", "Instrument", "Theory", "Rhythm", "Foundation"]),
        ("Notation", ["Hands", "Exercises", "Instrument", "Theory", "Rhythm", "Foundation"]),
        ("Repertoire", ["Notation", "Hands", "Exercises", "Instrument", "Theory", "Rhythm", "Foundation"]),
        ("Choosing", ["Repertoire", "Hands", "Exercises", "Instrument", "Theory", "Rhythm", "Foundation"]),
        ("Engraving", ["Notation", "Hands", "Exercises", "Instrument", "Theory", "Rhythm", "Foundation"]),
        ("Sound", ["Notation", "Exercises", "Instrument", "Theory", "Rhythm", "Foundation"]),
    ];

    /// <summary>Packages beyond the base library, each with the one area that may use it.</summary>
    public static readonly ImmutableArray<(string Area, string Package)> Packages =
    [
        ("Engraving", "SkiaSharp"),
    ];

    /// <summary>The area of an engine type's namespace; empty for a type outside all of them.</summary>
    public static string Of(string fullNamespace) =>
        fullNamespace.StartsWith("Passagework.", StringComparison.Ordinal)
            ? fullNamespace.Split('.')[1]
            : string.Empty;
}
