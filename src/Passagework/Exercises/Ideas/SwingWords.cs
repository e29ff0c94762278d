using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Exercises.Ideas;

/// <summary>How unevenly pairs of notes are played, in words.</summary>
internal static class SwingWords
{
    /// <summary>Such as <c>straight</c>, <c>swung two to one</c> and <c>swung 3 to 2</c>.</summary>
    public static string Of(Swing swing)
    {
        if (swing.IsStraight)
        {
            return "straight";
        }

        var ratio = swing.Share / (Fraction.One - swing.Share);
        return ratio.IsWhole
            ? $"swung {NumberWords.Of(ratio.Numerator)} to one"
            : $"swung {AxisText.Of((int)ratio.Numerator)} to {AxisText.Of((int)ratio.Denominator)}";
    }
}
