using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Exercises;

/// <summary>The one place where lines get the names of their pitches.</summary>
internal static class LineSpelling
{
    private const string Names = "C C# D D# E F F# G G# A A# B";

    /// <summary>A spelled pitch for each key that sounds.</summary>
    /// <param name="keys">MIDI keys in the order played.</param>
    public static ImmutableArray<SpelledPitch> Spell(IReadOnlyList<int> keys)
    {
        var names = Names.Split(' ');
        return
        [
            .. keys.Select(key =>
                NoteName.TryParse(names[WholeNumbers.Modulo(key, 12)], out var name)
                    ? SpelledPitch.At(name, key)
                    : throw new System.Diagnostics.UnreachableException()
            ),
        ];
    }
}
