using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Numbers as files write them, within bounds that keep all sums exact.</summary>
internal static class ReadNumbers
{
    private const decimal Largest = 100_000_000;
    private const long Decimals = 1000;

    /// <summary>A whole number; null for anything else.</summary>
    public static int? Whole(string text) =>
        int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;

    /// <summary>A number with at most three decimals, up to a hundred million; null for anything else.</summary>
    public static Fraction? Exact(string text)
    {
        if (
            !decimal.TryParse(
                text,
                NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out var number
            )
            || Math.Abs(number) > Largest
            || number * Decimals != decimal.Truncate(number * Decimals)
        )
        {
            return null;
        }

        return Fraction.Of((long)(number * Decimals), Decimals);
    }

    /// <summary>A number with any decimals; null for anything else.</summary>
    public static decimal? Any(string text) =>
        decimal.TryParse(
            text,
            NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out var number
        )
            ? number
            : null;

    /// <summary>Any finite number above 0; null for anything else.</summary>
    public static double? Positive(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
        && double.IsFinite(number)
        && number > 0
            ? number
            : null;
}
