using System.Collections.Immutable;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Exercises;

/// <summary>Moves written places along their strings and remembers the first that would leave the neck.</summary>
internal sealed class PlaceMover(Func<Place, int> shiftOf, Interval interval)
{
    private const int HighestFret = 36;
    private int? _lastShift;

    /// <summary>The first place that could not be moved; null while all could.</summary>
    public Place? Lost { get; private set; }

    /// <summary>Whether a layout names places that move.</summary>
    public static bool MovesPlaces(Layout? layout) =>
        layout is null or Layout.PerString or Layout.Diagonal or Layout.OneString or Layout.Given;

    /// <summary>The layout with its places moved; layouts near a fret stay as they are.</summary>
    public Layout? Move(Layout? layout) =>
        layout switch
        {
            Layout.PerString even => even with { From = Move(even.From) },
            Layout.Diagonal diagonal => diagonal with { From = Move(diagonal.From) },
            Layout.Given given => new Layout.Given([.. given.Places.Select(Move)]),
            Layout.OneString single => single with
            {
                From = Move(Place.At(single.String, single.From)).Fret,
                To = Move(Place.At(single.String, single.To)).Fret,
            },
            _ => layout,
        };

    /// <summary>The line with its places moved, and pitches without a place by the interval.</summary>
    public WrittenLine Move(WrittenLine line) => new([.. line.Entries.Select(Move)]);

    /// <summary>Locks whose hand position moves along.</summary>
    public ImmutableArray<Lock> MoveLocks(ImmutableArray<Lock> locks) =>
        [
            .. locks.Select(locked =>
                locked.Position is { } position
                    ? locked with
                    {
                        Position = Math.Max(1, position + (_lastShift ?? 0)),
                    }
                    : locked
            ),
        ];

    private WrittenEntry Move(WrittenEntry entry) =>
        entry with
        {
            Place = entry.Place is { } place ? Move(place) : null,
            Pitch = entry.Pitch is { } pitch ? pitch + interval : null,
        };

    private Place Move(Place place)
    {
        var shift = shiftOf(place);
        _lastShift ??= shift;
        var fret = place.Fret + shift;
        if (fret is >= 0 and <= HighestFret)
        {
            return Place.At(place.String, fret);
        }

        Lost ??= place;
        return place;
    }
}
