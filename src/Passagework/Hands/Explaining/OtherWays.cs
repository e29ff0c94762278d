using System.Collections.Immutable;
using Passagework.Exercises;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Hands.Explaining;

/// <summary>One way to play a note, and what the whole exercise comes to with it.</summary>
/// <param name="Lock">What fixes the note to this way (<see cref="Exercises.Ideas.NoteLocks"/>).</param>
/// <param name="Words">Such as <c>third finger</c> and <c>up-stroke</c>.</param>
/// <param name="Bpm">Top tempo in felt beats a minute; null where no hand can play it so, or nothing limits it.</param>
/// <param name="Impossible">Why no hand can play it so; null where one can.</param>
public sealed record OtherWay(Lock Lock, string Words, double? Bpm, string? Impossible);

/// <summary>Why a note has its finger and its stroke: what the others would come to, with everything else planned anew.</summary>
public sealed record OtherWays
{
    /// <summary>The top tempo as it is, felt beats a minute; null where nothing limits it.</summary>
    public required double? Bpm { get; init; }

    /// <summary>The other fingers, and the other strings where the same note lies, the best first.</summary>
    public required ImmutableArray<OtherWay> Fingerings { get; init; }

    /// <summary>The other strokes, the best first; empty where the note has none to choose.</summary>
    public required ImmutableArray<OtherWay> Strokes { get; init; }

    /// <summary>Why this finger, in a sentence.</summary>
    public required string WhyFinger { get; init; }

    /// <summary>Why this stroke, in a sentence.</summary>
    public required string WhyStroke { get; init; }

    /// <summary>The other ways to play a note; each is planned for the whole line.</summary>
    /// <exception cref="ArgumentOutOfRangeException">There is no such note.</exception>
    public static OtherWays Of(Measurement measured, int note)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(note);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(note, measured.Realization.Notes.Length);
        return new WaySearch(measured, note).Search();
    }
}
