using CsCheck;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Tests.Rhythm;

public sealed class TempoMapTests
{
    [Theory]
    [InlineData(2.0, "4/4", 120, "1")]
    [InlineData(0.125, "4/4", 120, "1/16")]
    [InlineData(2.0, "6/8", 60, "3/4")]
    [InlineData(1.0, "5/8", 60, "1/8")]
    [InlineData(0.25, "2/2", 120, "1/4")]
    [InlineData(-2.0, "4/4", 120, "-1")]
    public void SecondsAt_counts_felt_beats(double seconds, string meter, double bpm, string time) =>
        Assert.Equal(
            seconds,
            TempoMap.Of(Beats.Tempo(bpm), Beats.Meter(meter)).SecondsAt(Beats.Fraction(time)),
            1e-12
        );

    [Theory]
    [InlineData(0, "0")]
    [InlineData(1, "1/4")]
    [InlineData(4, "1")]
    [InlineData(5, "3/2")]
    [InlineData(6, "2")]
    [InlineData(6.5, "19/8")]
    [InlineData(7, "11/4")]
    [InlineData(-1, "-1/4")]
    public void SecondsAt_goes_by_the_tempo_that_holds(double seconds, string time)
    {
        // A bar of four quarters at 60, one at 120, then dotted quarters at 120.
        var map = TempoMap.Of([
            new TempoChange(Fraction.Zero, Beats.Tempo(60), Fraction.Of(1, 4)),
            new TempoChange(Fraction.One, Beats.Tempo(120), Fraction.Of(1, 4)),
            new TempoChange(Fraction.Of(2), Beats.Tempo(120), Fraction.Of(3, 8)),
        ]);

        Assert.Equal(seconds, map.SecondsAt(Beats.Fraction(time)), 1e-12);
    }

    [Fact]
    public void SecondsAt_never_goes_back() =>
        Gen.Int[30, 300]
            .Array[1, 6]
            .Select(Gen.Int[-40, 400], Gen.Int[1, 40])
            .Sample(
                (bpms, sixteenth, step) =>
                {
                    var map = TempoMap.Of([
                        .. bpms.Select(
                            (bpm, i) => new TempoChange(Fraction.Of(i), Beats.Tempo(bpm), Fraction.Of(1, 4))
                        ),
                    ]);
                    return map.SecondsAt(Fraction.Of(sixteenth, 16))
                        < map.SecondsAt(Fraction.Of(sixteenth + step, 16));
                }
            );

    [Fact]
    public void Of_refuses_changes_out_of_order()
    {
        var start = new TempoChange(Fraction.Zero, default, Fraction.Of(1, 4));
        var late = start with { At = Fraction.One };

        Assert.Throws<ArgumentException>(() => TempoMap.Of([]));
        Assert.Throws<ArgumentException>(() => TempoMap.Of([late]));
        Assert.Throws<ArgumentException>(() => TempoMap.Of([start, start]));
        Assert.Throws<ArgumentException>(() => TempoMap.Of([start, late, start]));
        Assert.Throws<ArgumentException>(() => TempoMap.Of([start with { Beat = Fraction.Zero }]));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(0.99)]
    [InlineData(1000.1)]
    [InlineData(-60)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Tempo_refuses_what_nobody_counts(double bpm) => Assert.False(Tempo.TryOf(bpm, out _));

    [Fact]
    public void Tempo_is_60_by_default_and_keeps_its_decimals()
    {
        Assert.Equal(60, default(Tempo).BeatsPerMinute);
        Assert.Equal(default, Beats.Tempo(60));
        Assert.Equal(default(Tempo).GetHashCode(), Beats.Tempo(60).GetHashCode());
        Assert.Equal("92.1", Beats.Tempo(92.1).ToString());
        Assert.Equal(125.0, Beats.Tempo(120).PulseMs(4));
    }
}
