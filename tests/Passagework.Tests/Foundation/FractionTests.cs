using CsCheck;
using Passagework.Foundation;

namespace Passagework.Tests.Foundation;

public sealed class FractionTests
{
    private static readonly Gen<Fraction> Any = Gen.Int[-1000, 1000]
        .Select(Gen.Int[1, 1000], (n, d) => Fraction.Of(n, d));

    [Theory]
    [InlineData("3/8", 6, 16)]
    [InlineData("-3/8", 3, -8)]
    [InlineData("3/8", -3, -8)]
    [InlineData("2", 10, 5)]
    [InlineData("0", 0, 7)]
    [InlineData("1/9223372036854775807", 1, long.MaxValue)]
    [InlineData("-9223372036854775807", long.MinValue + 1, 1)]
    public void Of_is_in_lowest_terms_with_the_sign_above(string text, long numerator, long denominator)
    {
        var fraction = Fraction.Of(numerator, denominator);

        Assert.Equal(text, fraction.ToString());
        Assert.True(Fraction.TryParse(text, out var read));
        Assert.Equal(fraction, read);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("1/0")]
    [InlineData("1/-2")]
    [InlineData("1/+2")]
    [InlineData("1//2")]
    [InlineData("1/2/3")]
    [InlineData(" 1/2")]
    [InlineData("1 /2")]
    [InlineData("1,5")]
    [InlineData("0.5")]
    [InlineData("1/")]
    [InlineData("/2")]
    [InlineData("9223372036854775808")]
    [InlineData("-9223372036854775808")]
    [InlineData("1/9223372036854775808")]
    public void TryParse_refuses_what_is_no_fraction(string? text) =>
        Assert.False(Fraction.TryParse(text, out _));

    [Fact]
    public void Default_is_zero_over_one()
    {
        Assert.Equal((0L, 1L), (default(Fraction).Numerator, default(Fraction).Denominator));
        Assert.Equal(Fraction.Zero, default);
        Assert.Equal(Fraction.Of(0, -5), Fraction.Zero);
    }

    [Theory]
    [InlineData("5/6", "1/2", "1/3", '+')]
    [InlineData("1/6", "1/2", "1/3", '-')]
    [InlineData("-1/6", "1/3", "1/2", '-')]
    [InlineData("1/6", "1/2", "1/3", '*')]
    [InlineData("3/2", "1/2", "1/3", '/')]
    [InlineData("-2", "1/2", "-1/4", '/')]
    public void Arithmetic_is_exact(string expected, string left, string right, char sign)
    {
        var (a, b) = (Read(left), Read(right));
        var result = sign switch
        {
            '+' => a + b,
            '-' => a - b,
            '*' => a * b,
            _ => a / b,
        };

        Assert.Equal(expected, result.ToString());
    }

    [Theory]
    [InlineData(1, "3/2")]
    [InlineData(-2, "-3/2")]
    [InlineData(-1, "-1")]
    [InlineData(0, "1/2")]
    [InlineData(-1, "-1/2")]
    public void Floor_goes_down_also_below_zero(long floor, string text) =>
        Assert.Equal(floor, Read(text).Floor());

    [Theory]
    [InlineData("1/4", "5/4", "1/2")]
    [InlineData("1/4", "-1/4", "1/2")]
    [InlineData("0", "-3/2", "1/2")]
    public void Modulo_is_never_negative(string rest, string value, string modulus) =>
        Assert.Equal(rest, Read(value).Modulo(Read(modulus)).ToString());

    [Fact]
    public void Division_by_zero_is_refused()
    {
        Assert.Throws<DivideByZeroException>(() => Fraction.Of(1, 0));
        Assert.Throws<DivideByZeroException>(() => Fraction.One / Fraction.Zero);
    }

    [Fact]
    public void Arithmetic_beyond_64_bits_is_refused_not_wrapped()
    {
        var large = Fraction.Of(long.MaxValue);

        Assert.Throws<OverflowException>(() => large + Fraction.One);
        Assert.Throws<OverflowException>(() => large * large);
        Assert.Throws<OverflowException>(() => Fraction.Of(1, long.MaxValue) * Fraction.Of(1, 2));
        Assert.Throws<OverflowException>(() => Fraction.Of(long.MinValue, -1));
    }

    [Fact]
    public void Arithmetic_needs_no_room_for_what_cancels() =>
        Assert.Equal(Fraction.One, Fraction.Of(long.MaxValue, 2) * Fraction.Of(2, long.MaxValue));

    [Fact]
    public void Order_is_exact_where_doubles_are_equal()
    {
        var low = Fraction.Of(long.MaxValue - 1, long.MaxValue);

        Assert.Equal(1.0, low.ToDouble());
        Assert.True(low < Fraction.One && Fraction.One > low && low <= Fraction.One && low != Fraction.One);
        Assert.False(low >= Fraction.One);
    }

    [Fact]
    public void Arithmetic_keeps_the_laws() =>
        Any.Select(Any, Any)
            .Sample(
                (a, b, c) =>
                    a + b == b + a
                    && a + b - b == a
                    && (a + b) * c == (a * c) + (b * c)
                    && (b == Fraction.Zero || a / b * b == a)
                    && a.CompareTo(b) == Math.Sign((a - b).Numerator)
                    && Fraction.Of(a.Floor()) <= a
                    && a < Fraction.Of(a.Floor() + 1)
            );

    [Fact]
    public void ToString_reads_back() =>
        Any.Sample(fraction => Fraction.TryParse(fraction.ToString(), out var read) && read == fraction);

    private static Fraction Read(string text) =>
        Fraction.TryParse(text, out var fraction)
            ? fraction
            : throw new ArgumentException(text, nameof(text));
}
