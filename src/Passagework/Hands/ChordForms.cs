using System.Collections.Immutable;
using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>The ways in which fingers can hold the notes of a short chord.</summary>
/// <remarks>
/// By constraint, after Radicioni and Lombardo 2005: a lower fret takes a lower finger; on one fret the string nearer the
/// ceiling takes the lower finger; only the first and the third finger lie across strings, with no string between them
/// open, muted or fretted below; no two fingers are further apart than the hand reaches.
/// </remarks>
public static class ChordForms
{
    /// <summary>
    /// All forms, each with a finger for each place (0 for an open string), in the order of the fingers; empty when no hand
    /// can hold the chord.
    /// </summary>
    /// <param name="places">One place on each sounding string; strings left out are muted.</param>
    /// <param name="fretboard">The instrument.</param>
    /// <param name="handSize">1 for the average adult.</param>
    /// <exception cref="ArgumentException">Two places on one string.</exception>
    public static ImmutableArray<ImmutableArray<int>> Of(
        ImmutableArray<Place> places,
        Fretboard fretboard,
        double handSize = 1
    )
    {
        if (places.Select(place => place.String).Distinct().Count() < places.Length)
        {
            throw new ArgumentException("One place on a string.", nameof(places));
        }

        var span = new HandSpan(Geometry.Of(fretboard), handSize);
        var forms = ImmutableArray.CreateBuilder<ImmutableArray<int>>();
        Extend(places, [], span, handSize, forms);
        return forms.ToImmutable();
    }

    private static void Extend(
        ImmutableArray<Place> places,
        ImmutableArray<int> fingers,
        HandSpan span,
        double handSize,
        ImmutableArray<ImmutableArray<int>>.Builder forms
    )
    {
        if (fingers.Length == places.Length)
        {
            forms.Add(fingers);
            return;
        }

        var place = places[fingers.Length];
        foreach (var finger in place.IsOpen ? [0] : new[] { 1, 2, 3, 4 })
        {
            var fits = Enumerable
                .Range(0, fingers.Length)
                .Where(i => !places[i].IsOpen && !place.IsOpen)
                .All(i =>
                    fingers[i] == finger
                        ? LiesAcross(places[i], place, finger, places)
                        : GoTogether((places[i], fingers[i]), (place, finger), span, handSize)
                );
            if (fits)
            {
                Extend(places, fingers.Add(finger), span, handSize, forms);
            }
        }
    }

    private static bool LiesAcross(Place one, Place other, int finger, ImmutableArray<Place> places)
    {
        var (low, high) = (Math.Min(one.String, other.String), Math.Max(one.String, other.String));
        return one.Fret == other.Fret
            && finger is 1 or 3
            && Enumerable
                .Range(low + 1, high - low - 1)
                .All(between => places.Any(place => place.String == between && place.Fret >= one.Fret));
    }

    private static bool GoTogether(
        (Place Place, int Finger) one,
        (Place Place, int Finger) other,
        HandSpan span,
        double handSize
    )
    {
        var (lower, higher) = one.Finger < other.Finger ? (one, other) : (other, one);
        var inOrder =
            lower.Place.Fret < higher.Place.Fret
            || (lower.Place.Fret == higher.Place.Fret && lower.Place.String > higher.Place.String);
        return inOrder
            && span.LeastMm(lower.Place, higher.Place)
                <= HandConstants.SpanMm(lower.Finger, higher.Finger) * handSize;
    }
}
