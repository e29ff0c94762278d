using CsCheck;
using Passagework.Foundation;
using Passagework.Notation;

namespace Passagework.Tests.Notation;

public sealed class TabLengthTests
{
    [Theory]
    [InlineData("w", 1, 1)]
    [InlineData("h.", 3, 4)]
    [InlineData("q", 1, 4)]
    [InlineData("q..", 7, 16)]
    [InlineData("e3", 1, 12)]
    [InlineData("s3", 1, 24)]
    [InlineData("s5", 1, 20)]
    [InlineData("s7", 1, 28)]
    [InlineData("t9", 1, 36)]
    [InlineData("s.5", 3, 40)]
    [InlineData("t.", 3, 64)]
    [InlineData("(5/16)", 5, 16)]
    [InlineData("(1/64)", 1, 64)]
    [InlineData("(3)", 3, 1)]
    public void Length_is_written_in_its_shortest_form(string text, int numerator, int denominator) =>
        Assert.Equal(text, TabLength.Write(Fraction.Of(numerator, denominator)));

    [Theory]
    [InlineData("s6", 1, 24)]
    [InlineData("Q", 1, 4)]
    [InlineData("e2", 1, 8)]
    public void Other_ways_to_write_a_length_are_read(string text, int numerator, int denominator)
    {
        var at = 0;

        Assert.True(TabLength.TryRead(text, ref at, out var length));
        Assert.Equal(Fraction.Of(numerator, denominator), length);
        Assert.Equal(text.Length, at);
    }

    [Theory]
    [InlineData("")]
    [InlineData("x")]
    [InlineData("q...")]
    [InlineData("q16")]
    [InlineData("(0)")]
    [InlineData("(-1/4)")]
    [InlineData("(65)")]
    [InlineData("(1/9223372036854775807)")]
    [InlineData("(1/4")]
    public void What_is_no_length_is_not_read(string text)
    {
        var at = 0;

        Assert.False(TabLength.TryRead(text, ref at, out _));
        Assert.Equal(0, at);
    }

    [Fact]
    public void Every_length_is_read_back() =>
        Gen.Int[1, 200]
            .Select(Gen.Int[1, 200])
            .Where((numerator, denominator) => numerator <= 64 * denominator)
            .Sample(
                (numerator, denominator) =>
                {
                    var length = Fraction.Of(numerator, denominator);
                    var text = TabLength.Write(length);
                    var at = 0;

                    Assert.True(TabLength.TryRead(text, ref at, out var read));
                    Assert.Equal((length, text.Length), (read, at));
                }
            );
}
