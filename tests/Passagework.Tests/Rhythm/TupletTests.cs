using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Tests.Rhythm;

public sealed class TupletTests
{
    [Theory]
    [InlineData(2, "plain", "1/8", "2:3", "1/8")]
    [InlineData(3, "3:2", "1/8", "plain", "1/8")]
    [InlineData(4, "plain", "1/16", "4:3", "1/8")]
    [InlineData(5, "5:4", "1/16", "5:6", "1/16")]
    [InlineData(6, "6:4", "1/16", "plain", "1/16")]
    [InlineData(7, "7:4", "1/16", "7:6", "1/16")]
    [InlineData(9, "9:8", "1/32", "9:6", "1/16")]
    [InlineData(1, "plain", "1/4", "plain", "3/8")]
    [InlineData(8, "plain", "1/32", "8:6", "1/16")]
    public void Of_notes_in_a_beat_is_written_as_the_table_says(
        int notes,
        string simple,
        string simpleValue,
        string dotted,
        string dottedValue
    )
    {
        var quarter = Tuplet.Of(Beats.Meter("4/4"), notes);
        var dottedQuarter = Tuplet.Of(Beats.Meter("12/8"), notes);

        Assert.Equal((simple, simpleValue), (quarter.ToString(), quarter.Written.ToString()));
        Assert.Equal((dotted, dottedValue), (dottedQuarter.ToString(), dottedQuarter.Written.ToString()));
        Assert.Equal(Fraction.Of(1, 4 * notes), quarter.Sounding);
        Assert.Equal(Fraction.Of(3, 8 * notes), dottedQuarter.Sounding);
    }

    // Ticks per note at 5040 to the quarter, which divides by every number of notes up to ten.
    [Theory]
    [InlineData(3, 1680)]
    [InlineData(5, 1008)]
    [InlineData(6, 840)]
    [InlineData(7, 720)]
    [InlineData(9, 560)]
    public void Sounding_is_a_whole_number_of_ticks(int notes, int ticks) =>
        Assert.Equal(Fraction.Of(ticks), Tuplet.Of(default, notes).Sounding * Fraction.Of(4 * 5040));

    // At 480 to the quarter: sevenths and ninths do not come out.
    [Theory]
    [InlineData(3, "160")]
    [InlineData(5, "96")]
    [InlineData(6, "80")]
    [InlineData(7, "480/7")]
    [InlineData(9, "160/3")]
    public void Sounding_comes_out_at_480_ticks_only_for_some(int notes, string ticks) =>
        Assert.Equal(ticks, (Tuplet.Of(default, notes).Sounding * Fraction.Of(4 * 480)).ToString());

    [Fact]
    public void Of_fits_beats_of_other_units()
    {
        Assert.Equal(new Tuplet(3, 2, Fraction.Of(1, 4)), Tuplet.Of(Beats.Meter("2/2"), 3));
        Assert.Equal(new Tuplet(2, 2, Fraction.Of(1, 16)), Tuplet.Of(Beats.Meter("7/8"), 2));
    }

    [Theory]
    [InlineData(0)]
    [InlineData(10)]
    public void Of_refuses_other_numbers(int notes) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => Tuplet.Of(default, notes));
}
