using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Instrument;

namespace Passagework.Engraving.Pictures;

/// <summary>Where strings, frets and places of a drawn neck lie.</summary>
/// <remarks>
/// Worked out along the neck (away from the nut) and across it (away from string 1), then turned. Frets are spaced as
/// on the instrument as long as two dots fit side by side in the narrowest; a longer stretch of neck is spaced evenly.
/// </remarks>
internal sealed class NeckFrame
{
    /// <summary>From string to string.</summary>
    public const double SpacingMm = 5.2;

    private const double LargestDotMm = 4.8;
    private const double NarrowestFretMm = 4.2;
    private const double BetweenDotsMm = 0.4;
    private const double EdgeMm = 3;

    // Room beside the nut for string numbers, and under the neck for fret numbers.
    private const double StringNumbersMm = 5.2;
    private const double FretNumbersMm = 6;

    // From the first wire to the dots of open strings: the nut, or a capo, stands between.
    private const double OpenMm = 2;

    private readonly FretboardOptions _options;
    private readonly ImmutableArray<double> _frets;
    private readonly double _before;

    public NeckFrame(Fretboard instrument, FretRange range, FretboardOptions options)
    {
        (_options, Strings, Range) = (options, instrument.Tuning.StringCount, range);
        _before = StringNumbersMm + (range.HasOpen ? LargestDotMm + OpenMm + 0.9 : 1.2);
        var count = range.Last - range.First + 1;
        var neck = Math.Max(options.LengthMm - _before - EdgeMm, count * NarrowestFretMm);
        var even = neck / count;
        DotMm = Math.Min(LargestDotMm, even - BetweenDotsMm);
        _frets =
            TrueFrets(range, neck, instrument.Capo) is var frets
            && frets[^1] - frets[^2] >= DotMm + BetweenDotsMm
                ? frets
                : [.. Enumerable.Range(0, count + 1).Select(number => number * even)];
        LengthMm = _before + neck + EdgeMm;
        BreadthMm = LargestDotMm + (SpacingMm * (Strings - 1)) + FretNumbersMm;
    }

    public FretRange Range { get; }

    public int Strings { get; }

    /// <summary>Outer size of a dot.</summary>
    public double DotMm { get; }

    /// <summary>Along the neck, with all that stands beside it.</summary>
    public double LengthMm { get; }

    /// <summary>Across the neck, with all that stands beside it.</summary>
    public double BreadthMm { get; }

    public double WidthMm => IsHorizontal ? LengthMm : BreadthMm;

    public double HeightMm => IsHorizontal ? BreadthMm : LengthMm;

    public bool IsHorizontal => _options.Turn == NeckTurn.Horizontal;

    /// <summary>Distance of the wire of a fret from the left edge of what is drawn; the one before the first is the edge.</summary>
    public double WireMm(int fret) => _frets[fret - Range.First + 1];

    /// <summary>Middle of the stretch in which a finger stands; open strings lie beside the nut.</summary>
    public double AlongMm(int fret) =>
        fret == 0 ? -(LargestDotMm / 2) - OpenMm : (WireMm(fret) + WireMm(fret - 1)) / 2;

    /// <summary>Distance of a string from string 1.</summary>
    public static double AcrossMm(int stringNumber) => (stringNumber - 1) * SpacingMm;

    public double EndMm => _frets[^1];

    /// <summary>Where string numbers stand: their far edge from the first wire.</summary>
    public double NumbersAlongMm => -_before + (StringNumbersMm / 2) - 0.6;

    /// <summary>Where fret numbers stand: their middle from string 1.</summary>
    public double NumbersAcrossMm => AcrossMm(Strings) + (LargestDotMm / 2) + (FretNumbersMm / 2);

    public Point At(Place place) => Turned(AlongMm(place.Fret), AcrossMm(place.String));

    /// <summary>From along and across to the page.</summary>
    public Point Turned(double along, double across)
    {
        var (x, y) = (_before + along, (LargestDotMm / 2) + across);
        return (IsHorizontal, _options.LeftHanded) switch
        {
            (true, false) => new Point(x, y),
            (true, true) => new Point(LengthMm - x, y),
            (false, false) => new Point(BreadthMm - y, x),
            (false, true) => new Point(y, x),
        };
    }

    private static ImmutableArray<double> TrueFrets(FretRange range, double neck, int capo)
    {
        var start = Geometry.FretDistanceMm(1, capo + range.First - 1);
        var scale = neck / (Geometry.FretDistanceMm(1, capo + range.Last) - start);
        return
        [
            .. Enumerable
                .Range(range.First - 1, range.Last - range.First + 2)
                .Select(fret => (Geometry.FretDistanceMm(1, capo + fret) - start) * scale),
        ];
    }
}
