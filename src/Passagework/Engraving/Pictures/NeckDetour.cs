using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Instrument;

namespace Passagework.Engraving.Pictures;

/// <summary>Chooses the corners of the way to the next group.</summary>
/// <remarks>
/// Straight where it can be seen. Where it would lie on the way already drawn, run through another dot or be too short
/// to show, it goes round: between the strings, beside the fret, or bent outwards.
/// </remarks>
internal sealed class NeckDetour(NeckFrame frame, NeckNotes notes)
{
    // All in mm, chosen by eye: the shortest way that shows between two dots, how far a way leaves a dot at a slant, how
    // far it keeps from the dots of a fret, and how far a way between two strings is bent.
    private const double ShortestMm = 2;
    private const double SlantMm = 4.5;
    private const double BesideFretMm = 2.2;
    private const double BendMm = 2.4;

    public ImmutableArray<Point> Corners(Place from, Place to)
    {
        if (from.String == to.String)
        {
            return IsHidden(from, to) ? AlongString(from, to) : Straight(from, to);
        }

        if (from.Fret == to.Fret)
        {
            return IsHidden(from, to) ? AlongFret(from, to) : Straight(from, to);
        }

        return Steps().Any(step => step == (from, to) || step == (to, from))
            ? Bent(from, to)
            : Straight(from, to);
    }

    private ImmutableArray<Point> Straight(Place from, Place to) => [frame.At(from), frame.At(to)];

    // Beyond the string as seen from string 1; the last string has fret numbers there.
    private ImmutableArray<Point> AlongString(Place from, Place to)
    {
        var side = from.String == frame.Strings ? -1 : 1;
        var across = NeckFrame.AcrossMm(from.String) + (side * NeckFrame.SpacingMm / 2);
        var (start, end) = (frame.AlongMm(from.Fret), frame.AlongMm(to.Fret));
        var slant = Slant(start, end);
        return
        [
            frame.At(from),
            frame.Turned(start + slant, across),
            frame.Turned(end - slant, across),
            frame.At(to),
        ];
    }

    private ImmutableArray<Point> AlongFret(Place from, Place to)
    {
        var along = frame.AlongMm(from.Fret) + (frame.DotMm / 2) + BesideFretMm;
        var (start, end) = (NeckFrame.AcrossMm(from.String), NeckFrame.AcrossMm(to.String));
        var slant = Slant(start, end);
        return
        [
            frame.At(from),
            frame.Turned(along, start + slant),
            frame.Turned(along, end - slant),
            frame.At(to),
        ];
    }

    private static double Slant(double start, double end) =>
        Math.Sign(end - start) * Math.Min(SlantMm, Math.Abs(end - start) * 0.4);

    private ImmutableArray<Point> Bent(Place from, Place to)
    {
        var (a, b) = (frame.At(from), frame.At(to));
        var (x, y) = (b.X - a.X, b.Y - a.Y);
        var bend = BendMm / Math.Sqrt((x * x) + (y * y));
        return [a, new Point(((a.X + b.X) / 2) - (y * bend), ((a.Y + b.Y) / 2) + (x * bend)), b];
    }

    private bool IsHidden(Place from, Place to) =>
        IsTooShort(from, to)
        || notes.Places.Any(place => Lies(place, from, to))
        || Steps().Any(step => Overlaps(step.From, step.To, from, to));

    private bool IsTooShort(Place from, Place to)
    {
        var (a, b) = (frame.At(from), frame.At(to));
        return Math.Abs(a.X - b.X) + Math.Abs(a.Y - b.Y) < frame.DotMm + ShortestMm;
    }

    private IEnumerable<(Place From, Place To)> Steps() =>
        notes.Played.Zip(notes.Played.Skip(1), (before, after) => (before.Place, after.Place));

    // Whether a place lies between two others of its string or fret.
    private static bool Lies(Place place, Place from, Place to) =>
        from.String == to.String
            ? place.String == from.String && IsInside(place.Fret, from.Fret, to.Fret)
            : place.Fret == from.Fret && IsInside(place.String, from.String, to.String);

    private static bool Overlaps(Place a, Place b, Place from, Place to) =>
        from.String == to.String
            ? a.String == from.String && b.String == from.String && Share(a.Fret, b.Fret, from.Fret, to.Fret)
            : a.Fret == from.Fret && b.Fret == from.Fret && Share(a.String, b.String, from.String, to.String);

    private static bool IsInside(int number, int one, int other) =>
        number > Math.Min(one, other) && number < Math.Max(one, other);

    private static bool Share(int a, int b, int c, int d) =>
        Math.Max(Math.Min(a, b), Math.Min(c, d)) < Math.Min(Math.Max(a, b), Math.Max(c, d));
}
