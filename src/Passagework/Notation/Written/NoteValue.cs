using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>A written value: a whole note halved so many times, with dots. The default is the whole note.</summary>
/// <param name="Halvings">−3 for the maxima to 10 for the 1024th.</param>
/// <param name="Dots">At most two are written.</param>
internal readonly record struct NoteValue(int Halvings, int Dots)
{
    private const int LongestHalvings = -3;
    private const int ShortestHalvings = 10;
    private static readonly ImmutableArray<string> Names =
    [
        "maxima",
        "long",
        "breve",
        "whole",
        "half",
        "quarter",
        "eighth",
        "16th",
        "32nd",
        "64th",
        "128th",
        "256th",
        "512th",
        "1024th",
    ];

    /// <summary>Length of the shortest value that has a name.</summary>
    public static Fraction Shortest { get; } = Fraction.Of(1, 1 << ShortestHalvings);

    /// <summary>As MusicXML calls it, dots apart.</summary>
    public string Name => Names[Halvings - LongestHalvings];

    /// <summary>Flags or beams.</summary>
    public int Flags => Math.Max(0, Halvings - 2);

    /// <summary>As a fraction of a whole note.</summary>
    public Fraction Length =>
        Fraction.Of((2L << Dots) - 1, 1L << Dots)
        * (Halvings < 0 ? Fraction.Of(1L << -Halvings) : Fraction.Of(1, 1L << Halvings));

    /// <summary>The value of a name; null for a word that is none.</summary>
    public static NoteValue? Named(string name)
    {
        var index = Names.IndexOf(name);
        return index < 0 ? null : new NoteValue(index + LongestHalvings, 0);
    }

    /// <summary>Every value not longer than <paramref name="length"/>, the longest first.</summary>
    /// <param name="length">As a fraction of a whole note.</param>
    /// <param name="mostDots">Dots that may be used.</param>
    public static IEnumerable<NoteValue> UpTo(Fraction length, int mostDots)
    {
        for (var halvings = LongestHalvings; halvings <= ShortestHalvings; halvings++)
        {
            for (var dots = mostDots; dots >= 0; dots--)
            {
                var value = new NoteValue(halvings, dots);
                if (value.Length <= length)
                {
                    yield return value;
                }
            }
        }
    }
}
