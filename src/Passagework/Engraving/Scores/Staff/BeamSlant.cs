using System.Collections.Immutable;

namespace Passagework.Engraving.Scores;

/// <summary>A stem under a beam.</summary>
/// <param name="X">Where it stands, in staff spaces.</param>
/// <param name="Position">Its note nearest the beam, in half spaces above the middle line.</param>
/// <param name="Beams">Beams it carries.</param>
internal readonly record struct BeamedStem(double X, int Position, int Beams);

/// <summary>The middle of the outermost beam: a straight line. Spaces, y downwards from the top line.</summary>
/// <param name="FromX">Its left end.</param>
/// <param name="FromY">Height there.</param>
/// <param name="ToX">Its right end.</param>
/// <param name="ToY">Height there.</param>
internal readonly record struct BeamLine(double FromX, double FromY, double ToX, double ToY)
{
    /// <summary>Height at a place between the ends.</summary>
    public double At(double x) =>
        ToX == FromX ? FromY : FromY + ((ToY - FromY) * (x - FromX) / (ToX - FromX));
}

/// <summary>Lays a beam over its stems.</summary>
/// <remarks>
/// Slants lie within the range that handbooks give and are chosen by us: quarter of a space for a second to 1.5 for an
/// octave, half of it where the beam is short. Ends sit on a staff line, straddle it or hang from it.
/// </remarks>
internal static class BeamSlant
{
    private const double Step = 0.25;
    private const double Short = 4;
    private const double Middle = 2;
    private const double Exact = 1e-9;
    private static readonly ImmutableArray<double> ByInterval = [0, 0.25, 0.5, 0.75, 1, 1.25, 1.25, 1.5];

    /// <summary>How far the beam rises from the first stem to the last, in spaces; negative where it falls.</summary>
    public static double Rise(ReadOnlySpan<BeamedStem> stems, bool up)
    {
        var (first, last) = (stems[0], stems[^1]);
        var interval = last.Position - first.Position;
        if (interval == 0 || InnerIsNearest(stems, up))
        {
            return 0;
        }

        var slant = ByInterval[Math.Min(Math.Abs(interval), ByInterval.Length - 1)];
        return Math.Sign(interval) * (last.X - first.X < Short ? slant / 2 : slant);
    }

    /// <summary>The beam: the place on the grid of the staff at which its end stems are nearest their usual length.</summary>
    public static BeamLine Line(ReadOnlySpan<BeamedStem> stems, bool up)
    {
        var rise = Math.Truncate(Rise(stems, up) / Step) * Step;
        var outward = up ? -1.0 : 1.0;
        var usual = Start(stems, up, rise, usual: true);
        var least = Start(stems, up, rise, usual: false);
        var y = outward * (Math.Ceiling((least - Exact) / Step) * Step);
        var best = double.NaN;
        for (; double.IsNaN(best) || outward * y <= usual + 1; y += outward * Step)
        {
            var nearer =
                double.IsNaN(best)
                || Math.Abs((outward * y) - usual) < Math.Abs((outward * best) - usual) - Exact;
            best = nearer && !Floats(y) && !Floats(y - rise) ? y : best;
        }

        return new BeamLine(stems[0].X, best, stems[^1].X, best - rise);
    }

    /// <summary>Whether an end between the staff lines touches none of them.</summary>
    public static bool Floats(double y) => y is > 0 and < 4 && Math.Abs(y - Math.Floor(y) - 0.5) < Step / 2;

    // Height at the first stem, counted outward, that gives every stem its length.
    private static double Start(ReadOnlySpan<BeamedStem> stems, bool up, double rise, bool usual)
    {
        var (first, last) = (stems[0], stems[^1]);
        var outward = up ? -1.0 : 1.0;
        var start = double.NegativeInfinity;
        for (var i = 0; i < stems.Length; i++)
        {
            var stem = stems[i];
            var inner = i > 0 && i < stems.Length - 1;
            var length =
                inner || !usual
                    ? StemRules.Least(stem.Beams)
                    : StemRules.Length(stem.Position, up, stem.Beams);
            var share = last.X == first.X ? 0 : (stem.X - first.X) / (last.X - first.X);
            var end = Middle - (stem.Position / 2.0) + (outward * length);
            start = Math.Max(start, outward * (end + (rise * share)));
        }

        return start;
    }

    private static bool InnerIsNearest(ReadOnlySpan<BeamedStem> stems, bool up)
    {
        var sign = up ? 1 : -1;
        var ends = Math.Max(sign * stems[0].Position, sign * stems[^1].Position);
        for (var i = 1; i < stems.Length - 1; i++)
        {
            if (sign * stems[i].Position > ends)
            {
                return true;
            }
        }

        return false;
    }
}
