using Passagework.Foundation;

namespace Passagework.Rhythm;

/// <summary>How unevenly each pair of equal pulses is played: the share of the pair that its first pulse takes.</summary>
/// <remarks>The default value is straight (1/2). Swing acts at 2 and at 4 notes a beat and nowhere else.</remarks>
public readonly record struct Swing
{
    private readonly Fraction _shareLessHalf;

    private Swing(Fraction share) => _shareLessHalf = share - Fraction.Of(1, 2);

    /// <summary>Share of the first pulse of each pair, from 1/2 (straight) to 3/4.</summary>
    public Fraction Share => _shareLessHalf + Fraction.Of(1, 2);

    /// <summary>Whether the pulses are even.</summary>
    public bool IsStraight => _shareLessHalf == Fraction.Zero;

    /// <summary>Finest denominator of a share, so that swung times stay exact in 64 bits.</summary>
    private const long FinestShare = 1_000_000;

    /// <summary>Swing with that share of the first pulse; false outside [1/2, 3/4] or beyond millionths.</summary>
    public static bool TryOf(Fraction share, out Swing swing)
    {
        var legal =
            share.Denominator <= FinestShare && share >= Fraction.Of(1, 2) && share <= Fraction.Of(3, 4);
        swing = legal ? new Swing(share) : default;
        return legal;
    }

    /// <summary>
    /// The played time of a written time, both as fractions of a whole note from the first bar line: the middle of
    /// each pair of pulses moves to the share, what lies between is stretched evenly.
    /// </summary>
    /// <param name="written">The exact, unswung time.</param>
    /// <param name="meter">Gives the felt beat.</param>
    /// <param name="notesPerBeat">Pulses per felt beat; swing acts at 2 and 4.</param>
    public Fraction Apply(Fraction written, Meter meter, int notesPerBeat)
    {
        if (IsStraight || notesPerBeat is not (2 or 4))
        {
            return written;
        }

        var pair = meter.Beat * Fraction.Of(2, notesPerBeat);
        var inside = written.Modulo(pair);
        var start = written - inside;
        var half = pair * Fraction.Of(1, 2);
        var two = Fraction.Of(2);
        return inside <= half
            ? start + (inside * two * Share)
            : start + (pair * Share) + ((inside - half) * two * (Fraction.One - Share));
    }

    /// <summary>The written time of a played time: undoes <see cref="Apply"/>.</summary>
    /// <param name="played">The exact, swung time.</param>
    /// <param name="meter">Gives the felt beat.</param>
    /// <param name="notesPerBeat">Pulses per felt beat; swing acts at 2 and 4.</param>
    public Fraction Undo(Fraction played, Meter meter, int notesPerBeat)
    {
        if (IsStraight || notesPerBeat is not (2 or 4))
        {
            return played;
        }

        var pair = meter.Beat * Fraction.Of(2, notesPerBeat);
        var inside = played.Modulo(pair);
        var start = played - inside;
        var middle = pair * Share;
        var two = Fraction.Of(2);
        return inside <= middle
            ? start + (inside / (two * Share))
            : start + (pair * Fraction.Of(1, 2)) + ((inside - middle) / (two * (Fraction.One - Share)));
    }
}
