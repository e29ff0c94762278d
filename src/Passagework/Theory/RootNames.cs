using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Theory;

/// <summary>The usual name of a root when only its pitch is known. Common practice: the key with fewer signs.</summary>
public static class RootNames
{
    private static readonly ImmutableArray<NoteName> Minor = Parse("C C# D Eb E F F# G G# A Bb B");
    private static readonly ImmutableArray<NoteName> Major = Parse("C Db D Eb E F F# G Ab A Bb B");

    /// <summary>The name for a pitch class or MIDI key; minor scales are G# and C# where major ones are Ab and Db.</summary>
    public static NoteName Usual(int midi, bool minor) =>
        (minor ? Minor : Major)[WholeNumbers.Modulo(midi, 12)];

    internal static ImmutableArray<NoteName> Parse(string names) =>
        [
            .. names
                .Split(' ')
                .Select(text =>
                    NoteName.TryParse(text, out var name)
                        ? name
                        : throw new ArgumentException(text, nameof(names))
                ),
        ];
}
