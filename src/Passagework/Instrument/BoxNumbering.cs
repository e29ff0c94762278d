using Passagework.Foundation;

namespace Passagework.Instrument;

/// <summary>How a teacher numbers the boxes; recipes and the engine always count from the root.</summary>
/// <remarks>
/// Our box 1 begins on the root, box 2 on the next scale note, and so on round. Teachers who begin elsewhere differ
/// only in the number that they give to our box 1. The default value changes nothing.
/// </remarks>
public readonly record struct BoxNumbering
{
    private readonly int _shift;

    private BoxNumbering(int shift) => _shift = shift;

    /// <summary>The number that the teacher gives to our box 1.</summary>
    public int NumberOfRootBox => _shift + 1;

    /// <summary>The numbering in which the box that begins on the root has that number, 1 to 12.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside this range.</exception>
    public static BoxNumbering WithRootBox(int number)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(number, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(number, 12);
        return new BoxNumbering(number - 1);
    }

    /// <summary>The teacher's number of our box, where a note set has that many boxes.</summary>
    public int Shown(int box, int boxes) => WholeNumbers.Modulo(box - 1 + _shift, boxes) + 1;

    /// <summary>Our number of the box that the teacher calls <paramref name="shown"/>.</summary>
    public int Read(int shown, int boxes) => WholeNumbers.Modulo(shown - 1 - _shift, boxes) + 1;
}
