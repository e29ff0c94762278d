using CsCheck;
using Passagework.Foundation;

namespace Passagework.Tests.Foundation;

public sealed class WholeNumbersTests
{
    [Theory]
    [InlineData(6, 12, 18)]
    [InlineData(1, 5, 16)]
    [InlineData(7, 7, 0)]
    [InlineData(7, 0, 7)]
    [InlineData(0, 0, 0)]
    public void Gcd_is_the_largest_common_divisor(long divisor, long a, long b) =>
        Assert.Equal(divisor, WholeNumbers.Gcd(a, b));

    [Theory]
    [InlineData(20, 4, 5)]
    [InlineData(12, 4, 6)]
    [InlineData(9223372036854775807, 9223372036854775807, 9223372036854775807)]
    public void Lcm_is_the_smallest_common_multiple(long multiple, long a, long b) =>
        Assert.Equal(multiple, WholeNumbers.Lcm(a, b));

    [Fact]
    public void Lcm_beyond_64_bits_is_refused_not_wrapped() =>
        Assert.Throws<OverflowException>(() => WholeNumbers.Lcm(long.MaxValue, long.MaxValue - 1));

    [Theory]
    [InlineData(1, 13, 12)]
    [InlineData(11, -1, 12)]
    [InlineData(0, -12, 12)]
    public void Modulo_is_never_negative(int rest, int value, int modulus) =>
        Assert.Equal(rest, WholeNumbers.Modulo(value, modulus));

    // Slow twin: try every divisor.
    [Fact]
    public void Gcd_and_Lcm_equal_trying_every_number() =>
        Gen.Int[1, 120]
            .Select(Gen.Int[1, 120])
            .Sample(
                (a, b) =>
                    WholeNumbers.Gcd(a, b) == Enumerable.Range(1, a).Last(d => a % d == 0 && b % d == 0)
                    && WholeNumbers.Lcm(a, b)
                        == Enumerable.Range(1, a * b).First(m => m % a == 0 && m % b == 0),
                iter: 300
            );
}
