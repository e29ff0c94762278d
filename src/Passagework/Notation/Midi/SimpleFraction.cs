using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Finds the fraction with the smallest denominator in an interval.</summary>
internal static class SimpleFraction
{
    private const int Finest = 1000;

    /// <summary>The simplest fraction from <paramref name="low"/> to <paramref name="high"/>, above 0; at most thousandths.</summary>
    public static Fraction Within(double low, double high)
    {
        for (var denominator = 1; denominator < Finest; denominator++)
        {
            var numerator = (long)Math.Ceiling(low * denominator);
            if (numerator <= high * denominator)
            {
                return Fraction.Of(numerator, denominator);
            }
        }

        return Fraction.Of((long)Math.Round((low + high) / 2 * Finest), Finest);
    }
}
