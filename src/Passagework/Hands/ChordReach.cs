using System.Collections.Immutable;
using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>A tone of a chord as a file tells it.</summary>
/// <param name="Midi">The MIDI key that sounds.</param>
/// <param name="Place">String and fret; null when only the pitch is known.</param>
public readonly record struct ReachedTone(int Midi, Place? Place);

/// <summary>Which of the notes that begin together lie under one hand: a sieve for music that others wrote.</summary>
public static class ChordReach
{
    // More tones than an instrument has strings are no chord for it; those far below are not tried.
    private const int MostLooked = 24;

    /// <summary>
    /// The numbers of the tones that are kept: the first, and each later one for which an average adult's fingers have a
    /// form together with those kept before it.
    /// </summary>
    /// <param name="tones">The highest first; at least one.</param>
    /// <param name="board">The instrument.</param>
    public static ImmutableArray<int> Keep(IReadOnlyList<ReachedTone> tones, Fretboard board)
    {
        var kept = ImmutableArray.Create(0);
        for (var i = 1; i < Math.Min(tones.Count, MostLooked) && kept.Length < board.Tuning.StringCount; i++)
        {
            var wider = kept.Add(i);
            var places = wider.Select(number =>
                ChordPlaces.OfTone(tones[number].Place, tones[number].Midi, board)
            );
            if (ChordPlaces.Of([.. places]).Any(HasForm))
            {
                kept = wider;
            }
        }

        return kept;

        bool HasForm(ImmutableArray<Place> chosen) => !ChordForms.Of(chosen, board).IsEmpty;
    }
}
