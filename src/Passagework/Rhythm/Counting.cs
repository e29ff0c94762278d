namespace Passagework.Rhythm;

/// <summary>What a room says between the beats when it counts aloud (common practice).</summary>
public enum Counting
{
    /// <summary><c>1 e &amp; a</c>, <c>1 trip let</c>.</summary>
    TripLet,

    /// <summary><c>1 ti te ta</c>, <c>1 la li</c>.</summary>
    LaLi,

    /// <summary><c>ta ka di mi</c>, <c>ta ki da</c>: the beat is a syllable too.</summary>
    TaKa,

    /// <summary>The number of each beat and nothing between.</summary>
    BeatsOnly,
}
