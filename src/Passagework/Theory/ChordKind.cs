using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Passagework.Theory;

/// <summary>What stands above the root of a chord.</summary>
/// <param name="Symbol">What is written after the root; empty for major.</param>
/// <param name="Degrees">Chord tones in the order in which they are stacked.</param>
public sealed record ChordKind(string Symbol, ImmutableArray<ScaleDegree> Degrees)
{
    /// <summary>All kinds, by their usual symbols. Formulas are common practice.</summary>
    public static ImmutableArray<ChordKind> All { get; } =
    [
        Kind("", "1 3 5"),
        Kind("m", "1 b3 5"),
        Kind("dim", "1 b3 b5"),
        Kind("aug", "1 3 #5"),
        Kind("5", "1 5"),
        Kind("sus2", "1 2 5"),
        Kind("sus4", "1 4 5"),
        Kind("6", "1 3 5 6"),
        Kind("m6", "1 b3 5 6"),
        Kind("7", "1 3 5 b7"),
        Kind("maj7", "1 3 5 7"),
        Kind("m7", "1 b3 5 b7"),
        Kind("mmaj7", "1 b3 5 7"),
        Kind("m7b5", "1 b3 b5 b7"),
        Kind("dim7", "1 b3 b5 bb7"),
        Kind("7sus4", "1 4 5 b7"),
        Kind("9", "1 3 5 b7 9"),
        Kind("maj9", "1 3 5 7 9"),
        Kind("m9", "1 b3 5 b7 9"),
        Kind("add9", "1 3 5 9"),
        Kind("7b9", "1 3 5 b7 b9"),
        Kind("7#9", "1 3 5 b7 #9"),
        Kind("13", "1 3 5 b7 9 13"),
    ];

    private static readonly FrozenDictionary<string, string> OtherWays = new Dictionary<string, string>
    {
        ["maj"] = "",
        ["M"] = "",
        ["min"] = "m",
        ["-"] = "m",
        ["°"] = "dim",
        ["o"] = "dim",
        ["+"] = "aug",
        ["sus"] = "sus4",
        ["min6"] = "m6",
        ["M7"] = "maj7",
        ["min7"] = "m7",
        ["-7"] = "m7",
        ["ø"] = "m7b5",
        ["ø7"] = "m7b5",
        ["°7"] = "dim7",
        ["o7"] = "dim7",
        ["7sus"] = "7sus4",
        ["M9"] = "maj9",
        ["min9"] = "m9",
    }.ToFrozenDictionary();

    private static readonly FrozenDictionary<string, ChordKind> BySymbol = All.ToFrozenDictionary(kind =>
        kind.Symbol
    );

    /// <summary>The kind written so, also in the other common ways (min, M7, °, ø, +); null when unknown.</summary>
    public static ChordKind? Find(string symbol) =>
        BySymbol.GetValueOrDefault(OtherWays.GetValueOrDefault(symbol, symbol));

    /// <summary>Kinds are the same when they are written the same.</summary>
    public bool Equals(ChordKind? other) => other is not null && Symbol == other.Symbol;

    /// <inheritdoc/>
    public override int GetHashCode() => Symbol.GetHashCode(StringComparison.Ordinal);

    private static ChordKind Kind(string symbol, string degrees) =>
        new(symbol, [.. ScaleDegree.ParseAll(degrees)]);
}
