using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Instrument;

/// <summary>The layouts that go string by string: unbroken runs, one string, open position, given places.</summary>
internal static class StringLayouts
{
    private const int OpenReach = 4;

    /// <summary>Unbroken scale order from a place, with a repeated count of notes on each string.</summary>
    public static Outcome<List<Spot>> Run(ScaleOnNeck scale, Place from, ReadOnlySpan<int> counts)
    {
        if (CheckString(scale, from.String, ".from") is { } wrongString)
        {
            return wrongString;
        }

        if (from.Fret > scale.Frets)
        {
            return new Fault($"there is no fret {from.Fret}", ".from", scale.NeckEnd);
        }

        var start = new Spot(from.String, from.Fret);
        return scale.Contains(scale.Key(start))
            ? StringWalk.Climb(scale, start, counts)
            : new Fault($"{from} is no note of the scale", ".from", NotesNearby(scale, start));
    }

    /// <summary>The notes of one string between two frets.</summary>
    public static Outcome<List<Spot>> OneString(ScaleOnNeck scale, Layout.OneString layout)
    {
        if (CheckString(scale, layout.String, ".string") is { } wrongString)
        {
            return wrongString;
        }

        if (layout.To < layout.From)
        {
            return new Fault(
                $"the run ends at fret {layout.To}, below its start at fret {layout.From}",
                ".to",
                "'from' is the lower fret; a line that falls has the direction 'down'"
            );
        }

        if (layout.To > scale.Frets)
        {
            return new Fault($"needs fret {layout.To} on string {layout.String}", ".to", scale.NeckEnd);
        }

        var spots = scale.Between(layout.String, layout.From, layout.To).ToList();
        return spots.Count > 0
            ? spots
            : new Fault("no note of the scale lies between these frets", ".to", "widen the range");
    }

    /// <summary>Frets 0 to 4 of each string, leaving out what a later string has there too.</summary>
    public static Outcome<List<Spot>> Open(ScaleOnNeck scale)
    {
        var spots = new List<Spot>();
        for (var number = scale.Strings; number >= 1; number--)
        {
            spots.AddRange(
                scale
                    .Between(number, 0, OpenReach)
                    .Where(spot => !LaterStringHas(scale, scale.Key(spot), number))
            );
        }

        return spots.Count > 0
            ? spots.OrderBy(scale.Key).ToList()
            : new Fault("no note of the scale lies in open position", Right: "choose another layout");
    }

    /// <summary>Places as given; they need not belong to the note set.</summary>
    public static Outcome<List<Spot>> Given(ScaleOnNeck scale, Layout.Given given)
    {
        if (given.Places.IsEmpty)
        {
            return new Fault("the list of places is empty", ".places", "at least one place, such as \"6:5\"");
        }

        for (var index = 0; index < given.Places.Length; index++)
        {
            var place = given.Places[index];
            if (CheckString(scale, place.String, $".places[{index}]") is { } wrongString)
            {
                return wrongString;
            }

            if (place.Fret > scale.Frets)
            {
                return new Fault($"{place} needs fret {place.Fret}", $".places[{index}]", scale.NeckEnd);
            }
        }

        return given.Places.Select(place => new Spot(place.String, place.Fret)).ToList();
    }

    /// <summary>Strings are named once each, from the lowest up.</summary>
    public static Fault? CheckStrings(ScaleOnNeck scale, ImmutableArray<int> strings)
    {
        for (var index = 0; index < strings.Length; index++)
        {
            if (CheckString(scale, strings[index], $".strings[{index}]") is { } wrongString)
            {
                return wrongString;
            }
        }

        var falling = strings.Zip(strings.Skip(1)).All(pair => pair.First > pair.Second);
        return falling
            ? null
            : new Fault(
                $"[{string.Join(", ", strings)}] does not climb from string to string",
                ".strings",
                $"[{string.Join(", ", strings.Distinct().OrderDescending())}]"
            );
    }

    private static Fault? CheckString(ScaleOnNeck scale, int number, string field) =>
        number >= 1 && number <= scale.Strings
            ? null
            : new Fault(
                $"there is no string {number}",
                field,
                $"the instrument has strings 1 to {scale.Strings}"
            );

    /// <summary>On a re-entrant tuning it need not be the next string that has the note too.</summary>
    private static bool LaterStringHas(ScaleOnNeck scale, int key, int number) =>
        Enumerable
            .Range(1, number - 1)
            .Any(later => key >= scale.Open(later) && key <= scale.Open(later) + OpenReach);

    private static string NotesNearby(ScaleOnNeck scale, Spot spot)
    {
        var key = scale.Key(spot);
        var frets = new[] { scale.Neighbour(key, -1), scale.Neighbour(key, 1) }
            .Select(near => near - scale.Open(spot.String))
            .Where(fret => fret >= 0 && fret <= scale.Frets)
            .Select(fret => $"{spot.String}:{fret}");
        return $"nearest: {string.Join(" or ", frets)}";
    }
}
