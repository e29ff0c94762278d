using System.Collections.Immutable;

namespace Passagework.Engraving.Setting;

/// <summary>Roman numerals of positions.</summary>
internal static class RomanNumerals
{
    private static readonly ImmutableArray<(int Value, string Sign)> Signs =
    [
        (10, "X"),
        (9, "IX"),
        (5, "V"),
        (4, "IV"),
        (1, "I"),
    ];

    /// <summary>A fret from 1 to 39, such as <c>VII</c>.</summary>
    public static string Of(int number)
    {
        var written = "";
        foreach (var (value, sign) in Signs)
        {
            while (number >= value)
            {
                written += sign;
                number -= value;
            }
        }

        return written;
    }
}
