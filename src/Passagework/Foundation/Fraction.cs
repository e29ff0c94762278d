using System.Globalization;
using System.Numerics;

namespace Passagework.Foundation;

/// <summary>An exact rational number, always in lowest terms with a positive denominator.</summary>
/// <remarks>The default value is 0. Arithmetic that leaves the 64-bit range throws <see cref="OverflowException"/>.</remarks>
public readonly record struct Fraction : IComparable<Fraction>
{
    // Stored as denominator − 1, so that the default value is the legal 0/1.
    private readonly long _denominatorLessOne;

    private Fraction(long numerator, long denominator)
    {
        Numerator = numerator;
        _denominatorLessOne = denominator - 1;
    }

    /// <summary>The number 0.</summary>
    public static Fraction Zero => default;

    /// <summary>The number 1.</summary>
    public static Fraction One => new(1, 1);

    /// <summary>The numerator; carries the sign.</summary>
    public long Numerator { get; }

    /// <summary>The denominator; at least 1.</summary>
    public long Denominator => _denominatorLessOne + 1;

    /// <summary>Whether the number is whole.</summary>
    public bool IsWhole => _denominatorLessOne == 0;

    /// <summary>The quotient in lowest terms.</summary>
    /// <exception cref="DivideByZeroException">The denominator is 0.</exception>
    public static Fraction Of(long numerator, long denominator = 1)
    {
        if (denominator == 0)
        {
            throw new DivideByZeroException();
        }

        return Reduce(numerator, denominator);
    }

    /// <summary>Reads <c>3</c>, <c>-3</c> or <c>3/8</c>; no spaces, no decimals, denominator above 0.</summary>
    public static bool TryParse(string? text, out Fraction fraction)
    {
        fraction = default;
        if (text is null)
        {
            return false;
        }

        var slash = text.IndexOf('/', StringComparison.Ordinal);
        var top = slash < 0 ? text : text[..slash];
        var bottom = slash < 0 ? "1" : text[(slash + 1)..];
        if (
            !long.TryParse(
                top,
                NumberStyles.AllowLeadingSign,
                CultureInfo.InvariantCulture,
                out var numerator
            )
            || !long.TryParse(bottom, NumberStyles.None, CultureInfo.InvariantCulture, out var denominator)
            || numerator == long.MinValue
            || denominator < 1
        )
        {
            return false;
        }

        fraction = Reduce(numerator, denominator);
        return true;
    }

    /// <summary>The largest whole number not above this one.</summary>
    public long Floor() => (Numerator / Denominator) - (Numerator % Denominator < 0 ? 1 : 0);

    /// <summary>What remains after taking away whole multiples of <paramref name="modulus"/>; in [0, modulus).</summary>
    public Fraction Modulo(Fraction modulus) => this - (modulus * Of((this / modulus).Floor()));

    /// <summary>The nearest double.</summary>
    public double ToDouble() => (double)Numerator / Denominator;

    /// <inheritdoc/>
    public int CompareTo(Fraction other) =>
        IsSmall && other.IsSmall
            ? (Numerator * other.Denominator).CompareTo(other.Numerator * Denominator)
            : ((Int128)Numerator * other.Denominator).CompareTo((Int128)other.Numerator * Denominator);

    /// <summary><c>3/8</c>, or <c>3</c> when whole.</summary>
    public override string ToString() =>
        IsWhole
            ? Numerator.ToString(CultureInfo.InvariantCulture)
            : string.Create(CultureInfo.InvariantCulture, $"{Numerator}/{Denominator}");

    /// <summary>The sum.</summary>
    public static Fraction operator +(Fraction a, Fraction b) =>
        a.IsSmall && b.IsSmall
            ? ReduceSmall(
                (a.Numerator * b.Denominator) + (b.Numerator * a.Denominator),
                a.Denominator * b.Denominator
            )
            : Reduce(
                ((Int128)a.Numerator * b.Denominator) + ((Int128)b.Numerator * a.Denominator),
                (Int128)a.Denominator * b.Denominator
            );

    /// <summary>The difference.</summary>
    public static Fraction operator -(Fraction a, Fraction b) => a + -b;

    /// <summary>The negative.</summary>
    public static Fraction operator -(Fraction a) => new(-a.Numerator, a.Denominator);

    /// <summary>The product.</summary>
    public static Fraction operator *(Fraction a, Fraction b) =>
        a.IsSmall && b.IsSmall
            ? ReduceSmall(a.Numerator * b.Numerator, a.Denominator * b.Denominator)
            : Reduce((Int128)a.Numerator * b.Numerator, (Int128)a.Denominator * b.Denominator);

    /// <summary>The quotient.</summary>
    /// <exception cref="DivideByZeroException"><paramref name="b"/> is 0.</exception>
    public static Fraction operator /(Fraction a, Fraction b)
    {
        if (b.Numerator == 0)
        {
            throw new DivideByZeroException();
        }

        if (a.IsSmall && b.IsSmall)
        {
            var sign = b.Numerator < 0 ? -1 : 1;
            return ReduceSmall(sign * a.Numerator * b.Denominator, sign * a.Denominator * b.Numerator);
        }

        return Reduce((Int128)a.Numerator * b.Denominator, (Int128)a.Denominator * b.Numerator);
    }

    /// <summary>Whether <paramref name="a"/> is below <paramref name="b"/>.</summary>
    public static bool operator <(Fraction a, Fraction b) => a.CompareTo(b) < 0;

    /// <summary>Whether <paramref name="a"/> is above <paramref name="b"/>.</summary>
    public static bool operator >(Fraction a, Fraction b) => a.CompareTo(b) > 0;

    /// <summary>Whether <paramref name="a"/> is not above <paramref name="b"/>.</summary>
    public static bool operator <=(Fraction a, Fraction b) => a.CompareTo(b) <= 0;

    /// <summary>Whether <paramref name="a"/> is not below <paramref name="b"/>.</summary>
    public static bool operator >=(Fraction a, Fraction b) => a.CompareTo(b) >= 0;

    // Products of two such numbers, and sums of two such products, stay inside 64 bits.
    private bool IsSmall => Numerator is > -(1L << 30) and < 1L << 30 && Denominator < 1L << 30;

    private static Fraction ReduceSmall(long numerator, long denominator)
    {
        var divisor = WholeNumbers.Gcd(Math.Abs(numerator), denominator);
        return new Fraction(numerator / divisor, denominator / divisor);
    }

    private static Fraction Reduce(Int128 numerator, Int128 denominator)
    {
        if (denominator < 0)
        {
            numerator = -numerator;
            denominator = -denominator;
        }

        var divisor = Gcd(Int128.Abs(numerator), denominator);
        return new Fraction((long)(numerator / divisor), (long)(denominator / divisor));
    }

    private static Int128 Gcd(Int128 a, Int128 b)
    {
        if (a <= long.MaxValue && b <= long.MaxValue)
        {
            return WholeNumbers.Gcd((long)a, (long)b);
        }

        while (b != 0)
        {
            (a, b) = (b, a % b);
        }

        return a;
    }
}
