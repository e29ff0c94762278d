using System.Collections.Immutable;
using Passagework.Instrument;

namespace Passagework.Hands;

/// <summary>The ways to place tones that sound at once, each on its own string.</summary>
internal static class ChordPlaces
{
    /// <summary>Where one tone may lie: at its place, or anywhere its pitch is.</summary>
    public static ImmutableArray<Place> OfTone(Place? place, int midi, Fretboard board) =>
        place is { } only ? [only] : [.. board.PlacesOf(midi)];

    /// <summary>One place for each tone, in the tones' order.</summary>
    public static IEnumerable<ImmutableArray<Place>> Of(ImmutableArray<ImmutableArray<Place>> tones) =>
        tones.Aggregate(
            (IEnumerable<ImmutableArray<Place>>)
                [
                    [],
                ],
            (chosen, places) =>
                chosen.SelectMany(before =>
                    places
                        .Where(place => before.All(other => other.String != place.String))
                        .Select(place => before.Add(place))
                )
        );
}
