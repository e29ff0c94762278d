using System.Collections.Immutable;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Exercises;

/// <summary>Moves written places along their strings and remembers the first that would leave the neck.</summary>
internal sealed class PlaceMover(Func<Place, int> shiftOf, Interval interval)
{
    private const int HighestFret = 36;
    private readonly HashSet<int> _shifts = [];

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

    /// <summary>
    /// Locks whose hand position moves along. Where strings move by different frets the shape is another one: then only
    /// fixed strokes stay.
    /// </summary>
    public ImmutableArray<Lock> MoveLocks(ImmutableArray<Lock> locks)
    {
        if (_shifts.Count > 1)
        {
            return
            [
                .. locks
                    .Where(locked => locked.Stroke is not null)
                    .Select(locked => new Lock(locked.Note, Stroke: locked.Stroke)),
            ];
        }

        var shift = _shifts.FirstOrDefault();
        return
        [
            .. locks.Select(locked =>
                locked with
                {
                    Position = locked.Position is { } position ? Math.Max(1, position + shift) : null,
                }
            ),
        ];
    }

    private WrittenEntry Move(WrittenEntry entry) =>
        entry with
        {
            Place = entry.Place is { } place ? Move(place) : null,
            Pitch = entry.Pitch is { } pitch ? pitch + interval : null,
            With =
            [
                .. entry.With.Select(tone => new WrittenTone(
                    tone.Place is { } place ? Move(place) : null,
                    tone.Pitch is { } pitch ? pitch + interval : null
                )),
            ],
        };

    private Place Move(Place place)
    {
        var shift = shiftOf(place);
        _shifts.Add(shift);
        var fret = place.Fret + shift;
        if (fret is >= 0 and <= HighestFret)
        {
            return Place.At(place.String, fret);
        }

        Lost ??= place;
        return place;
    }
}
