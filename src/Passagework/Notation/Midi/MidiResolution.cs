using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>How many ticks a quarter note has, and where a time falls.</summary>
/// <param name="Division">Ticks per quarter note.</param>
/// <param name="IsExact">Whether every time lies on a whole tick.</param>
internal sealed record MidiResolution(int Division, bool IsExact)
{
    private const int Finest = 0x7FFF;

    // 5040 = 2 · lcm(1 … 10) puts all of 2 to 10 notes a quarter on whole ticks.
    private static readonly int[] Usual = [480, 960, 1680, 5040];

    /// <summary>
    /// The smallest usual resolution that puts every time on a whole tick, else the smallest of at least 480 that does,
    /// else 5040 and the nearest tick.
    /// </summary>
    /// <param name="times">Fractions of a whole note.</param>
    public static MidiResolution For(IEnumerable<Fraction> times)
    {
        var unit = 1L;
        foreach (var time in times)
        {
            unit = WholeNumbers.Lcm(unit, (time * Fraction.Of(4)).Denominator);
            if (unit > Finest)
            {
                return new MidiResolution(Usual[^1], IsExact: false);
            }
        }

        var usual = Array.Find(Usual, division => division % unit == 0);
        var own = (Usual[0] + unit - 1) / unit * unit;
        return new MidiResolution(usual > 0 ? usual : (int)own, IsExact: true);
    }

    /// <summary>The nearest tick; halves go up.</summary>
    public long TickOf(Fraction time) => ((time * Fraction.Of(4L * Division)) + Fraction.Of(1, 2)).Floor();
}
