using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Theory;

/// <summary>Names with at most one sign, for notes that no key accounts for.</summary>
internal static class PlainNames
{
    private static readonly ImmutableArray<NoteName> Sharps = RootNames.Parse("C C# D D# E F F# G G# A A# B");
    private static readonly ImmutableArray<NoteName> Flats = RootNames.Parse("C Db D Eb E F Gb G Ab A Bb B");

    /// <summary>The natural or sharp name of a pitch class or MIDI key, for a line on the way up.</summary>
    public static NoteName Rising(int midi) => Sharps[WholeNumbers.Modulo(midi, 12)];

    /// <summary>The natural or flat name of a pitch class or MIDI key, for a line on the way down.</summary>
    public static NoteName Falling(int midi) => Flats[WholeNumbers.Modulo(midi, 12)];
}
