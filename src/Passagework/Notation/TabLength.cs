using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Lengths as the rhythm row writes them: a letter, dots, a tuplet number; any fraction in brackets.</summary>
/// <remarks>
/// <c>w h q e s t</c> are whole note to thirty-second; each dot adds half of what was added before; a number n means
/// n in the time of the power of two below it (3 in the time of 2, 5, 6 and 7 of 4). Whatever that can't say stands
/// as a fraction of a whole note, such as <c>(5/16)</c>. A rest has <c>r</c> before its length.
/// </remarks>
internal static class TabLength
{
    private const string Letters = "whqest";
    private const int MostDots = 2;

    // Longest length and finest grid that are read: they keep all sums far inside 64 bits.
    private const int MostWholeNotes = 64;
    private const int FinestGrid = 1 << 20;
    private static readonly int[] WrittenTuplets = [1, 3, 5, 7, 9, 11, 13, 15];

    /// <summary>The shortest way to write a length: plain before dotted before tuplets.</summary>
    public static string Write(Fraction length)
    {
        foreach (var tuplet in WrittenTuplets)
        {
            for (var dots = 0; dots <= MostDots; dots++)
            {
                var letter = LetterOf(length / Scale(dots, tuplet));
                if (letter >= 0)
                {
                    var number = tuplet == 1 ? "" : tuplet.ToString(CultureInfo.InvariantCulture);
                    return Letters[letter] + new string('.', dots) + number;
                }
            }
        }

        return $"({length})";
    }

    /// <summary>Reads one length at <paramref name="at"/> and moves it behind; false leaves it where it was.</summary>
    public static bool TryRead(string text, ref int at, out Fraction length)
    {
        length = default;
        if (at >= text.Length)
        {
            return false;
        }

        if (text[at] == '(')
        {
            return TryReadFraction(text, ref at, out length);
        }

        var letter = Letters.IndexOf(char.ToLowerInvariant(text[at]), StringComparison.Ordinal);
        if (letter < 0)
        {
            return false;
        }

        var next = at + 1;
        var dots = CountWhile(text, next, c => c == '.');
        next += dots;
        var digits = CountWhile(text, next, char.IsAsciiDigit);
        if (dots > MostDots || digits > 2)
        {
            return false;
        }

        var tuplet =
            digits == 0
                ? 1
                : int.Parse(text.AsSpan(next, digits), NumberStyles.None, CultureInfo.InvariantCulture);
        if (tuplet is < 1 or > 15)
        {
            return false;
        }

        at = next + digits;
        length = Fraction.Of(1, 1L << letter) * Scale(dots, tuplet);
        return true;
    }

    private static bool TryReadFraction(string text, ref int at, out Fraction length)
    {
        length = default;
        var close = text.IndexOf(')', at, Math.Min(text.Length - at, 40));
        if (
            close < 0
            || !Fraction.TryParse(text[(at + 1)..close], out length)
            || length <= Fraction.Zero
            || length > Fraction.Of(MostWholeNotes)
            || length.Denominator > FinestGrid
        )
        {
            return false;
        }

        at = close + 1;
        return true;
    }

    private static Fraction Scale(int dots, int tuplet)
    {
        var normal = (int)System.Numerics.BitOperations.RoundUpToPowerOf2((uint)(tuplet + 1)) / 2;
        return Fraction.Of((2L << dots) - 1, 1L << dots) * Fraction.Of(normal, tuplet);
    }

    private static int LetterOf(Fraction length)
    {
        for (var letter = 0; letter < Letters.Length; letter++)
        {
            if (length == Fraction.Of(1, 1L << letter))
            {
                return letter;
            }
        }

        return -1;
    }

    private static int CountWhile(string text, int from, Func<char, bool> wanted)
    {
        var count = 0;
        while (from + count < text.Length && wanted(text[from + count]))
        {
            count++;
        }

        return count;
    }
}
