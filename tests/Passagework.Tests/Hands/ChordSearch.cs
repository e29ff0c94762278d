using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Instrument;

namespace Passagework.Tests.Hands;

/// <summary>Every way to hold a chord, by trying all places, fingers and positions against the rules one by one.</summary>
internal sealed class ChordSearch(Fretboard board, double handSize)
{
    private readonly HandSpan _span = new(Geometry.Of(board), handSize);

    public static int Strain(FretState state) =>
        state.Form is null
            ? Math.Abs(state.Deviation)
            : Held(state).Sum(tone => Math.Abs(Deviation(tone, state.Position)));

    public IEnumerable<FretState> States(
        LineNote note,
        IEnumerable<Place> top,
        IReadOnlyCollection<int> openPositions
    ) =>
        from places in Product([
            [.. top],
            .. note.With.Select(PlacesOf),
        ])
        where places.Select(place => place.String).Distinct().Count() == places.Length
        from fingers in Product([.. places.Select(place => place.IsOpen ? new[] { 0 } : [1, 2, 3, 4])])
        let tones = places.Zip(fingers, (place, finger) => new FingeredTone(place, finger)).ToImmutableArray()
        where IsLegal(tones)
        from position in Positions(tones, openPositions)
        select new FretState(tones[0].Place, tones[0].Finger, position) { Form = new FretForm(tones, _span) };

    private Place[] PlacesOf(LineTone tone) =>
        tone.Place is { } place ? [place] : [.. board.PlacesOf(tone.Midi)];

    private static IEnumerable<T[]> Product<T>(ImmutableArray<T[]> choices) =>
        choices.Aggregate(
            (IEnumerable<T[]>)
                [
                    [],
                ],
            (before, next) => before.SelectMany(chosen => next.Select(one => chosen.Append(one).ToArray()))
        );

    // (a) lower fret, lower finger; (b) on one fret the lower-sounding string takes the lower finger; (c) only 1 and 3 lie
    // flat, nothing open, silent or lower between; (d) least span within reach.
    private bool IsLegal(ImmutableArray<FingeredTone> tones)
    {
        var held = tones.Where(tone => tone.Finger > 0).ToList();
        var pairs = held.SelectMany((one, i) => held.Skip(i + 1).Select(other => (one, other)));
        return pairs.All(pair =>
            pair.one.Finger == pair.other.Finger
                ? LiesFlat(pair.one, pair.other, tones)
                : InOrder(pair.one, pair.other) && Reaches(pair.one, pair.other)
        );
    }

    private static bool LiesFlat(FingeredTone one, FingeredTone other, ImmutableArray<FingeredTone> tones)
    {
        var (from, to) = (
            Math.Min(one.Place.String, other.Place.String),
            Math.Max(one.Place.String, other.Place.String)
        );
        return one.Place.Fret == other.Place.Fret
            && one.Finger is 1 or 3
            && Enumerable
                .Range(from, to - from + 1)
                .All(number =>
                    tones.Any(tone => tone.Place.String == number && tone.Place.Fret >= one.Place.Fret)
                );
    }

    private static bool InOrder(FingeredTone one, FingeredTone other)
    {
        var (low, high) = one.Finger < other.Finger ? (one.Place, other.Place) : (other.Place, one.Place);
        return low.Fret < high.Fret || (low.Fret == high.Fret && low.String > high.String);
    }

    private bool Reaches(FingeredTone one, FingeredTone other)
    {
        var (low, high) = one.Finger < other.Finger ? (one, other) : (other, one);
        return _span.LeastMm(low.Place, high.Place)
            <= HandConstants.SpanMm(low.Finger, high.Finger) * handSize;
    }

    private static IEnumerable<int> Positions(
        ImmutableArray<FingeredTone> tones,
        IReadOnlyCollection<int> openPositions
    )
    {
        var held = tones.Where(tone => tone.Finger > 0).ToList();
        if (held.Count == 0)
        {
            return openPositions;
        }

        var all = Enumerable.Range(1, held.Max(tone => tone.Place.Fret)).ToList();
        var near = all.FindAll(position =>
            held.TrueForAll(tone =>
                Deviation(tone, position) is -1 or 0 || (Deviation(tone, position) == 1 && tone.Finger > 1)
            )
        );
        return near.Count > 0
            ? near
            :
            [
                all.OrderBy(position => held.Sum(tone => Math.Abs(Deviation(tone, position))))
                    .ThenBy(position => position)
                    .First(),
            ];
    }

    private static IEnumerable<FingeredTone> Held(FretState state) =>
        state.Form!.Tones.Where(tone => tone.Finger > 0);

    private static int Deviation(FingeredTone tone, int position) =>
        tone.Place.Fret - position - (tone.Finger - 1);
}
