using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Engraving.Pictures;

/// <summary>The stretch of a neck that is drawn.</summary>
/// <param name="First">First fret, at least 1.</param>
/// <param name="Last">Last fret.</param>
/// <param name="HasOpen">Whether open strings stand beside the nut.</param>
internal readonly record struct FretRange(int First, int Last, bool HasOpen)
{
    private const int Fewest = 5;

    /// <summary>Whether the drawing begins at the nut or the capo.</summary>
    public bool BeginsAtNut => First == 1;

    /// <summary>
    /// All places with one fret more on both sides, five frets at least, never beyond the neck; what the options ask for
    /// instead must hold all places.
    /// </summary>
    public static Outcome<FretRange> Of(
        IReadOnlyList<Place> places,
        Fretboard instrument,
        FretboardOptions options
    )
    {
        var fretted = places
            .Where(place => !place.IsOpen)
            .Select(place => place.Fret)
            .DefaultIfEmpty(1)
            .ToList();
        var hasOpen = places.Any(place => place.IsOpen);
        var first = options.FromFret ?? (hasOpen ? 1 : Math.Max(1, fretted.Min() - 1));
        var last = options.ToFret ?? Math.Max(fretted.Max() + 1, first + Fewest - 1);
        last = Math.Min(last, instrument.PlayableFrets);
        if (options.ToFret is null && options.FromFret is null)
        {
            first = Math.Max(1, Math.Min(first, last - Fewest + 1));
        }

        if (first < 1 || last < first)
        {
            return new Fault(
                $"there are no frets {first} to {last} to draw",
                Right: $"a first and a last fret within 1 to {instrument.PlayableFrets}"
            );
        }

        var outside = places
            .Where(place => !place.IsOpen && (place.Fret < first || place.Fret > last))
            .ToList();
        var openAway = hasOpen && first > 1;
        if (outside.Count == 0 && !openAway)
        {
            return new FretRange(first, last, hasOpen);
        }

        var lost = openAway ? places.First(place => place.IsOpen) : outside[0];
        return new Fault(
            $"{lost} lies outside frets {first} to {last}",
            Right: $"frets {(hasOpen ? 1 : fretted.Min())} to {fretted.Max()} at least"
        );
    }
}
