using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>All ways to hold the tones of a chord: strings where they are free, fingers, and where the hand stands.</summary>
internal sealed class ChordLayer(Fretboard board, double handSize)
{
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

    private IEnumerable<ImmutableArray<Place>> Choices(LineNote note, ImmutableArray<Place> first) =>
        ChordPlaces.Of([
            first,
            .. note.With.Select(tone => ChordPlaces.OfTone(tone.Place, tone.Midi, board)),
        ]);
}
