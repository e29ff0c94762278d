using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Rhythm;

/// <summary>How that many equal notes a beat are written: n in the time of m.</summary>
/// <param name="Notes">Notes in the beat.</param>
/// <param name="InTimeOf">Notes of the written value that fill the beat; the same number where nothing is bracketed.</param>
/// <param name="Written">Written value of one note, as a fraction of a whole note.</param>
public readonly record struct Tuplet(int Notes, int InTimeOf, Fraction Written)
{
    /// <summary>Whether the notes stand without a bracket.</summary>
    public bool IsPlain => Notes == InTimeOf;

    /// <summary>Sounding length of one note, as a fraction of a whole note.</summary>
    public Fraction Sounding => Written * Fraction.Of(InTimeOf, Notes);

    /// <summary>
    /// The usual writing. A simple beat: m is the largest power of two not above n. A dotted beat: 3 up to four notes, else
    /// 6, but two threes and their halves stand plain. Handbooks differ for 4 and 5 in a dotted beat; this is our choice.
    /// </summary>
    /// <param name="meter">Gives the felt beat.</param>
    /// <param name="notesPerBeat">Equal notes in the felt beat, 1 to 9.</param>
    /// <exception cref="ArgumentOutOfRangeException">Another number of notes.</exception>
    public static Tuplet Of(Meter meter, int notesPerBeat)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(notesPerBeat, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(notesPerBeat, 9);
        var fill = meter.IsCompound ? Dotted(notesPerBeat) : PowerOfTwo(notesPerBeat);
        return new Tuplet(notesPerBeat, fill, meter.Beat / Fraction.Of(fill));
    }

    /// <summary>Such as <c>5:4</c>, or <c>plain</c>.</summary>
    public override string ToString() =>
        IsPlain ? "plain" : string.Create(CultureInfo.InvariantCulture, $"{Notes}:{InTimeOf}");

    private static int Dotted(int notes) =>
        notes switch
        {
            1 => 1,
            <= 4 => 3,
            _ => 6,
        };

    private static int PowerOfTwo(int notes) => 1 << (int)Math.Log2(notes);
}
