using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Sound.Backing;

/// <summary>A note of the backing in beats of its bar.</summary>
/// <param name="At">Beats after the bar line.</param>
/// <param name="Beats">How long; zero for drums.</param>
/// <param name="Sound">What sounds.</param>
/// <param name="Key">The MIDI key; 0 for drums.</param>
/// <param name="Strength">0 to 1.</param>
internal readonly record struct Hit(Fraction At, Fraction Beats, BandSound Sound, int Key, double Strength);

/// <summary>A beat of a bar as the players see it.</summary>
/// <param name="Number">From 0.</param>
/// <param name="IsStart">Whether a group of beats begins.</param>
/// <param name="IsBack">Whether it is the last of a group of two or more: a backbeat.</param>
/// <param name="Chord">The chord that sounds.</param>
/// <param name="IsChange">Whether that chord begins here.</param>
/// <param name="Next">The next beat's chord.</param>
/// <param name="IsLast">Whether it is the last beat of the bar.</param>
internal readonly record struct BandBeat(
    int Number,
    bool IsStart,
    bool IsBack,
    Chord Chord,
    bool IsChange,
    Chord Next,
    bool IsLast
);

/// <summary>How a groove cuts the beat.</summary>
/// <param name="Groove">The groove.</param>
/// <param name="Late">Where the note between two beats falls.</param>
/// <param name="HasLate">Whether beats are long enough to be divided.</param>
internal readonly record struct Division(Groove Groove, Fraction Late, bool HasLate);
