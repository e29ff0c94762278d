using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Rhythm;

/// <summary>Notes per beat, straight or swung, that a line can be played in.</summary>
/// <param name="NotesPerBeat">Pulses in a felt beat.</param>
/// <param name="Swing">How uneven each pair is.</param>
public readonly record struct Feel(int NotesPerBeat, Swing Swing)
{
    /// <summary>
    /// The usual ones: eighths straight and swung, triplets, sixteenths straight and swung, quintuplets, sextuplets.
    /// Swung means two thirds to one. Chosen by us.
    /// </summary>
    public static ImmutableArray<Feel> Usual { get; } =
    [
        new(2, default),
        new(2, Triplet),
        new(3, default),
        new(4, default),
        new(4, Triplet),
        new(5, default),
        new(6, default),
    ];

    private static Swing Triplet =>
        Swing.TryOf(Fraction.Of(2, 3), out var swing)
            ? swing
            : throw new System.Diagnostics.UnreachableException();
}
