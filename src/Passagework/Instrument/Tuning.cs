using System.Collections.Frozen;
using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Instrument;

/// <summary>What each string sounds open: 4 to 8 strings, any pitches, re-entrant too.</summary>
public sealed record Tuning
{
    /// <summary>The tunings known by name, written from the highest-numbered string to string 1 (common practice).</summary>
    private static readonly FrozenDictionary<string, string> Named = new Dictionary<string, string>
    {
        ["standard"] = "E2 A2 D3 G3 B3 E4",
        ["half step down"] = "Eb2 Ab2 Db3 Gb3 Bb3 Eb4",
        ["whole step down"] = "D2 G2 C3 F3 A3 D4",
        ["drop D"] = "D2 A2 D3 G3 B3 E4",
        ["drop C"] = "C2 G2 C3 F3 A3 D4",
        ["double drop D"] = "D2 A2 D3 G3 B3 D4",
        ["DADGAD"] = "D2 A2 D3 G3 A3 D4",
        ["open G"] = "D2 G2 D3 G3 B3 D4",
        ["open D"] = "D2 A2 D3 F#3 A3 D4",
        ["open E"] = "E2 B2 E3 G#3 B3 E4",
        ["all fourths"] = "E2 A2 D3 G3 C4 F4",
        ["seven-string"] = "B1 E2 A2 D3 G3 B3 E4",
        ["eight-string"] = "F#1 B1 E2 A2 D3 G3 B3 E4",
        ["bass"] = "E1 A1 D2 G2",
        ["five-string bass"] = "B0 E1 A1 D2 G2",
    }.ToFrozenDictionary();

    private readonly ImmutableArray<SpelledPitch> _open;

    private Tuning(string text, string? name, ImmutableArray<SpelledPitch> open)
    {
        Text = text;
        Name = name;
        _open = open;
    }

    /// <summary>Standard six-string tuning.</summary>
    public static Tuning Standard { get; } =
        TryParse("standard", out var standard)
            ? standard
            : throw new System.Diagnostics.UnreachableException();

    /// <summary>The names that can be written in place of notes.</summary>
    public static ImmutableArray<string> Names { get; } =
    [
        "standard",
        "half step down",
        "whole step down",
        "drop D",
        "drop C",
        "double drop D",
        "DADGAD",
        "open G",
        "open D",
        "open E",
        "all fourths",
        "seven-string",
        "eight-string",
        "bass",
        "five-string bass",
    ];

    /// <summary>As it was written: a name, or notes from the highest-numbered string to string 1.</summary>
    public string Text { get; }

    /// <summary>The name; null for a tuning written as notes.</summary>
    public string? Name { get; }

    /// <summary>Number of strings, 4 to 8.</summary>
    public int StringCount => _open.Length;

    /// <summary>What a string sounds open, without a capo; string 1 is the first.</summary>
    public SpelledPitch Open(int stringNumber) => _open[stringNumber - 1];

    /// <summary>Reads a name, or 4 to 8 notes such as <c>D2 A2 D3 G3 B3 E4</c>.</summary>
    public static bool TryParse(
        string? text,
        [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out Tuning? tuning
    )
    {
        tuning = null;
        if (text is null || text.Length > 64)
        {
            return false;
        }

        var name = Named.ContainsKey(text) ? text : null;
        var words = (name is null ? text : Named[text]).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var open = ImmutableArray.CreateBuilder<SpelledPitch>();
        foreach (var word in words.Reverse())
        {
            if (!SpelledPitch.TryParse(word, out var pitch))
            {
                return false;
            }

            open.Add(pitch);
        }

        tuning = open.Count is >= 4 and <= 8 ? new Tuning(text, name, open.ToImmutable()) : null;
        return tuning is not null;
    }

    /// <summary>Reads a tuning; a fault says which note is wrong, or which name was probably meant.</summary>
    public static Outcome<Tuning> Read(string text)
    {
        if (TryParse(text, out var tuning))
        {
            return tuning;
        }

        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var wrong = words.FirstOrDefault(word => !SpelledPitch.TryParse(word, out _));
        if (wrong is null)
        {
            return new Fault($"a tuning of {words.Length} strings", Right: "4 to 8 notes");
        }

        return words.Any(word => SpelledPitch.TryParse(word, out _))
            ? new Fault(
                $"{Quote.Short(wrong)} is no note",
                Right: "notes with octaves such as E2 A2 D3 G3 B3 E4"
            )
            : new Fault($"unknown tuning {Quote.Short(text)}", Right: NearestWord.Hint(text, Names));
    }

    /// <summary>Two tunings are equal when they are written alike.</summary>
    public bool Equals(Tuning? other) => other is not null && Text == other.Text;

    /// <inheritdoc/>
    public override int GetHashCode() => Text.GetHashCode(StringComparison.Ordinal);

    /// <inheritdoc/>
    public override string ToString() => Text;
}
