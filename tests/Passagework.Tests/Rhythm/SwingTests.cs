using CsCheck;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Tests.Rhythm;

public sealed class SwingTests
{
    // Ratio long to short, place of the off-beat in percent, log2 of the ratio, ticks of 480 (rounded) and of 5040.
    [Theory]
    [InlineData(1, 1, 50.0, 0, 240, 2520)]
    [InlineData(5, 4, 55.6, 0.322, 267, 2800)]
    [InlineData(4, 3, 57.1, 0.415, 274, 2880)]
    [InlineData(3, 2, 60.0, 0.585, 288, 3024)]
    [InlineData(5, 3, 62.5, 0.737, 300, 3150)]
    [InlineData(2, 1, 66.7, 1.000, 320, 3360)]
    [InlineData(5, 2, 71.4, 1.322, 343, 3600)]
    [InlineData(3, 1, 75.0, 1.585, 360, 3780)]
    public void Apply_moves_the_off_beat_to_the_exact_tick(
        int longPart,
        int shortPart,
        double percent,
        double log2,
        int ticks480,
        int ticks5040
    )
    {
        Assert.True(Swing.TryOf(Fraction.Of(longPart, longPart + shortPart), out var swing));

        var eighth = swing.Apply(Fraction.Of(1, 8), default, 2) * Fraction.Of(4);
        var ratio = eighth / (Fraction.One - eighth);

        Assert.Equal(Fraction.Of(ticks5040), eighth * Fraction.Of(5040));
        Assert.Equal(ticks480, Math.Round(eighth.ToDouble() * 480));
        Assert.Equal(percent, 100 * eighth.ToDouble(), 0.05);
        Assert.Equal(log2, Math.Log2(ratio.ToDouble()), 0.0005);
    }

    // 7:2 stands beyond 3/4, which is as far as swing goes here.
    [Theory]
    [InlineData("7/9")]
    [InlineData("49/100")]
    [InlineData("0")]
    public void TryOf_refuses_shares_outside_a_half_to_three_quarters(string share) =>
        Assert.False(Swing.TryOf(Beats.Fraction(share), out _));

    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    [InlineData(5)]
    [InlineData(6)]
    [InlineData(7)]
    [InlineData(8)]
    public void Apply_leaves_triplets_and_other_divisions_untouched(int perBeat)
    {
        var swing = Beats.Swing("2/3");

        for (var pulse = 0; pulse < 24; pulse++)
        {
            var written = Fraction.Of(pulse, 4 * perBeat);
            Assert.Equal(written, swing.Apply(written, default, perBeat));
        }
    }

    [Fact]
    public void Apply_swings_sixteenths_within_the_half_beat() =>
        Assert.Equal(
            ["0", "1/12", "1/8", "5/24", "1/4"],
            Enumerable
                .Range(0, 5)
                .Select(pulse => Beats.Swing("2/3").Apply(Fraction.Of(pulse, 16), default, 4).ToString())
        );

    [Fact]
    public void Apply_swings_duplets_of_a_dotted_beat() =>
        Assert.Equal("1/4", Beats.Swing("2/3").Apply(Fraction.Of(3, 16), Beats.Meter("6/8"), 2).ToString());

    [Fact]
    public void Apply_stretches_what_lies_between_evenly() =>
        Assert.Equal(
            ["0", "1/12", "1/6", "5/24", "1/4"],
            Enumerable
                .Range(0, 5)
                .Select(sixteenth =>
                    Beats.Swing("2/3").Apply(Fraction.Of(sixteenth, 16), default, 2).ToString()
                )
        );

    [Fact]
    public void Apply_keeps_the_order_and_every_pair()
    {
        var share = Gen.Int[0, 50].Select(part => Fraction.Of(50 + (part / 2), 100));

        share
            .Select(Gen.Int[-200, 200], Gen.Int[1, 6])
            .Sample(
                (part, at, step) =>
                {
                    Assert.True(Swing.TryOf(part, out var swing));
                    var early = swing.Apply(Fraction.Of(at, 96), default, 4);
                    var late = swing.Apply(Fraction.Of(at + step, 96), default, 4);
                    return early < late && swing.Apply(Fraction.Of(at, 8), default, 4) == Fraction.Of(at, 8);
                }
            );
    }

    [Fact]
    public void Undo_gives_back_every_written_time() =>
        Gen.Int[50, 75]
            .Select(Gen.Int[-500, 500], Gen.Int[1, 60], Gen.Int[1, 8])
            .Sample(
                (part, numerator, denominator, notesPerBeat) =>
                {
                    Assert.True(Swing.TryOf(Fraction.Of(part, 100), out var swing));
                    var written = Fraction.Of(numerator, denominator);
                    var played = swing.Apply(written, default, notesPerBeat);
                    return swing.Undo(played, default, notesPerBeat) == written;
                }
            );

    [Fact]
    public void Undo_straightens_the_off_beat() =>
        Assert.Equal("1/8", Beats.Swing("2/3").Undo(Fraction.Of(1, 6), default, 2).ToString());

    [Fact]
    public void Default_is_straight()
    {
        Assert.True(default(Swing).IsStraight);
        Assert.Equal("1/2", default(Swing).Share.ToString());
        Assert.Equal(default, Beats.Swing("1/2"));
    }
}
