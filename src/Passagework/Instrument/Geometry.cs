using System.Runtime.CompilerServices;

namespace Passagework.Instrument;

/// <summary>Where things lie on a neck, in millimetres; frets count from the capo.</summary>
/// <remarks>
/// Equal temperament: pos(n) = L (1 − 2^(−n/12)), so fret 12 stands at half the scale length and every gap is
/// 2^(−1/12) of the one before. String spacing grows evenly from the nut to the bridge.
/// </remarks>
public sealed class Geometry
{
    private static readonly ConditionalWeakTable<Fretboard, Geometry> Known = [];
    private const double UsualScaleMm = 648;
    private const double BassScaleMm = 864;
    private const int Beyond = 2;
    private readonly double[][] _fretMm;
    private readonly double[][] _spacingMm;

    private Geometry(Fretboard fretboard)
    {
        var (nut, bridge) = SpacingsOf(fretboard);
        var strings = fretboard.Tuning.StringCount;
        _fretMm = new double[strings][];
        _spacingMm = new double[strings][];
        var reference = ScaleLengthMm(fretboard, 1);
        for (var s = 0; s < strings; s++)
        {
            var length = ScaleLengthMm(fretboard, s + 1);
            var offset =
                FretDistanceMm(reference, Fretboard.NeutralFret)
                - FretDistanceMm(length, Fretboard.NeutralFret);
            var count = fretboard.PlayableFrets + Beyond + 1;
            _fretMm[s] = new double[count];
            _spacingMm[s] = new double[count];
            for (var f = 0; f < count; f++)
            {
                var fromNut = FretDistanceMm(length, fretboard.Capo + f);
                _fretMm[s][f] = offset + fromNut;
                _spacingMm[s][f] = nut + ((bridge - nut) * fromNut / length);
            }
        }

        PickingSpacingMm = nut + ((bridge - nut) * (reference - PickFromBridgeMm) / reference);
    }

    /// <summary>Distance of the picking point from the bridge (published plucking points: 60–100 mm).</summary>
    public const double PickFromBridgeMm = 80;

    /// <summary>The measures of an instrument, worked out once for as long as the instrument is in use.</summary>
    public static Geometry Of(Fretboard fretboard) => Known.GetValue(fretboard, board => new Geometry(board));

    /// <summary>Spacing of neighbouring strings where they are picked.</summary>
    public double PickingSpacingMm { get; }

    /// <summary>Distance of a fret from the nut, for a scale length (equal temperament).</summary>
    public static double FretDistanceMm(double scaleLengthMm, int fret) =>
        scaleLengthMm * (1 - Math.Pow(2, -fret / 12.0));

    /// <summary>Scale length of one string: as written, else the usual of the tuning (guitar 648, bass 864).</summary>
    public static double ScaleLengthMm(Fretboard fretboard, int stringNumber) =>
        fretboard.ScaleLengthsMm.Length switch
        {
            0 => IsBass(fretboard) ? BassScaleMm : UsualScaleMm,
            1 => fretboard.ScaleLengthsMm[0],
            _ => fretboard.ScaleLengthsMm[stringNumber - 1],
        };

    /// <summary>Where a fret stands on a string, counted from the capo; up to two frets beyond the last.</summary>
    public double FretMm(int stringNumber, int fret) => _fretMm[stringNumber - 1][fret];

    /// <summary>Distance between a fret (1 or more) and the one before it.</summary>
    public double GapMm(int stringNumber, int fret) =>
        _fretMm[stringNumber - 1][fret] - _fretMm[stringNumber - 1][fret - 1];

    /// <summary>Distance between neighbouring strings at a fret.</summary>
    public double SpacingMm(int stringNumber, int fret) => _spacingMm[stringNumber - 1][fret];

    private static bool IsBass(Fretboard fretboard) => fretboard.Tuning.Name is "bass" or "five-string bass";

    private static (double Nut, double Bridge) SpacingsOf(Fretboard fretboard)
    {
        var (nut, bridge) = fretboard.Tuning.Name switch
        {
            "bass" => (10.0, 19.0),
            "five-string bass" => (9.5, 18.0),
            _ => (7.0, 10.5),
        };
        return (fretboard.NutSpacingMm ?? nut, fretboard.BridgeSpacingMm ?? bridge);
    }
}
