using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>All ways to hold the tones of a chord: strings where they are free, fingers, and where the hand stands.</summary>
internal sealed class ChordLayer(Fretboard board, double handSize)
{
    // More frets than any hand spans; only prunes, the forms decide.
    private const int WidestFrets = 6;
    private readonly HandSpan _span = new(Geometry.Of(board), handSize);

    /// <summary>The states of a chord; empty when no hand can hold it.</summary>
    /// <param name="note">A note with others beside it.</param>
    /// <param name="places">Where its highest tone may lie.</param>
    /// <param name="openPositions">Where the hand may stand when nothing is fretted.</param>
    public IEnumerable<FretState> States(
        LineNote note,
        IEnumerable<Place> places,
        Func<IEnumerable<int>> openPositions
    ) =>
        from chosen in Choices(note, [.. places])
        from form in Forms(chosen)
        from position in form.Held.IsEmpty ? openPositions() : form.Positions()
        select new FretState(form.Tones[0].Place, form.Tones[0].Finger, position) { Form = form };

    private IEnumerable<FretForm> Forms(ImmutableArray<Place> places) =>
        ChordForms
            .Of(places, board, handSize)
            .Select(fingers => new FretForm(
                [.. places.Zip(fingers, (place, finger) => new FingeredTone(place, finger))],
                _span
            ));

    // One place for each tone, each on its own string, no further apart than a hand could ever reach.
    private List<ImmutableArray<Place>> Choices(LineNote note, ImmutableArray<Place> first)
    {
        var chosen = first.Select(place => ImmutableArray.Create(place)).ToList();
        foreach (var tone in note.With)
        {
            ImmutableArray<Place> places = tone.Place is { } fixedPlace
                ? [fixedPlace]
                : [.. board.PlacesOf(tone.Midi)];
            chosen =
            [
                .. chosen.SelectMany(before =>
                    places.Where(place => Fits(before, place)).Select(place => before.Add(place))
                ),
            ];
        }

        return chosen;
    }

    private static bool Fits(ImmutableArray<Place> chosen, Place place) =>
        chosen.All(other =>
            other.String != place.String
            && (other.IsOpen || place.IsOpen || Math.Abs(other.Fret - place.Fret) <= WidestFrets)
        );
}
