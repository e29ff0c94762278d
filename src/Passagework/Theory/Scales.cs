using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Passagework.Theory;

/// <summary>The formula of a scale or arpeggio: its degrees and their semitones above the root.</summary>
/// <param name="Name">The name in lower case, as recipes write it.</param>
/// <param name="Degrees">Such as 1 b3 4 5 b7: the number gives the letter, the sign the alteration from major.</param>
/// <param name="Semitones">Ascending, from 0.</param>
public sealed record ScaleFormula(
    string Name,
    ImmutableArray<ScaleDegree> Degrees,
    ImmutableArray<int> Semitones
);

/// <summary>The scales and arpeggios known by name. Formulas are common practice.</summary>
public static class Scales
{
    /// <summary>All formulas, in the order in which they are listed for people.</summary>
    public static ImmutableArray<ScaleFormula> All { get; } =
    [
        Formula("minor pentatonic", "1 b3 4 5 b7"),
        Formula("major pentatonic", "1 2 3 5 6"),
        Formula("minor blues", "1 b3 4 b5 5 b7"),
        Formula("major blues", "1 2 b3 3 5 6"),
        Formula("major", "1 2 3 4 5 6 7"),
        Formula("dorian", "1 2 b3 4 5 6 b7"),
        Formula("phrygian", "1 b2 b3 4 5 b6 b7"),
        Formula("lydian", "1 2 3 #4 5 6 7"),
        Formula("mixolydian", "1 2 3 4 5 6 b7"),
        Formula("natural minor", "1 2 b3 4 5 b6 b7"),
        Formula("locrian", "1 b2 b3 4 b5 b6 b7"),
        Formula("harmonic minor", "1 2 b3 4 5 b6 7"),
        Formula("melodic minor", "1 2 b3 4 5 6 7"),
        Formula("chromatic", "1 b2 2 b3 3 4 b5 5 b6 6 b7 7"),
        Formula("major triad", "1 3 5"),
        Formula("minor triad", "1 b3 5"),
        Formula("diminished triad", "1 b3 b5"),
        Formula("augmented triad", "1 3 #5"),
        Formula("dominant seventh", "1 3 5 b7"),
        Formula("major seventh", "1 3 5 7"),
        Formula("minor seventh", "1 b3 5 b7"),
        Formula("half-diminished seventh", "1 b3 b5 b7"),
        Formula("diminished seventh", "1 b3 b5 bb7"),
    ];

    private static readonly FrozenDictionary<string, ScaleFormula> ByName = All.ToFrozenDictionary(scale =>
        scale.Name
    );

    /// <summary>The formula of that name; null when unknown.</summary>
    public static ScaleFormula? Find(string name) => ByName.GetValueOrDefault(name);

    /// <summary>The formula with exactly these semitones; null when none has them.</summary>
    public static ScaleFormula? Find(ImmutableArray<int> semitones) =>
        All.FirstOrDefault(scale => scale.Semitones.SequenceEqual(semitones));

    private static ScaleFormula Formula(string name, string degrees)
    {
        var parsed = ScaleDegree.ParseAll(degrees).ToImmutableArray();
        return new ScaleFormula(name, parsed, [.. parsed.Select(degree => degree.Semitones)]);
    }
}
