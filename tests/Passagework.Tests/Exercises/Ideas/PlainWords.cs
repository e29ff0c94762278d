namespace Passagework.Tests.Exercises.Ideas;

/// <summary>Words of the engine that mean nothing to a teacher and never stand on a screen.</summary>
internal static class PlainWords
{
    private static readonly string[] Banned =
    [
        "recipe",
        "path",
        "realization",
        "acceptability",
        "swing weight",
        "pareto",
        "percentile",
        "$.",
    ];

    public static bool IsPlain(string? text) =>
        text is null
        || !Array.Exists(Banned, word => text.Contains(word, StringComparison.OrdinalIgnoreCase));
}
