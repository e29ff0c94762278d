using Passagework.Rhythm;

namespace Passagework.Tests.Rhythm;

public sealed class BarPlaceTests
{
    // Closing note after groups of 3 to 7 that shift by one over twelve notes, 4/4, at 2 to 6 notes a beat.
    [Theory]
    [InlineData(30, "beat 4", "beat 3", "off (+2 of 4)", "beat 3", "beat 2")]
    [InlineData(36, "beat 3", "beat 1", "beat 2", "off (+1 of 5)", "beat 3")]
    [InlineData(40, "beat 1", "off (+1 of 3)", "beat 3", "beat 1", "off (+4 of 6)")]
    [InlineData(42, "beat 2", "beat 3", "off (+2 of 4)", "off (+2 of 5)", "beat 4")]
    public void Of_a_closing_note_is_where_the_table_says(
        int pulse,
        string twos,
        string threes,
        string fours,
        string fives,
        string sixes
    ) =>
        Assert.Equal(
            [twos, threes, fours, fives, sixes],
            Enumerable.Range(2, 5).Select(perBeat => BarPlace.Of(pulse, perBeat, 4).ToString())
        );

    [Fact]
    public void Of_a_pulse_counts_bars_beats_and_pulses_before_it()
    {
        var place = BarPlace.Of(38, 4, 4);

        Assert.Equal((2L, 1, 2), (place.Bar, place.Beat, place.Pulse));
        Assert.False(place.IsOnBeat);
        Assert.True(BarPlace.Of(36, 4, 4) is { IsOnBeat: true, IsDownbeat: false });
        Assert.True(BarPlace.Of(32, 4, 4).IsDownbeat);
    }

    [Fact]
    public void Default_is_the_first_downbeat() =>
        Assert.Equal(
            ("beat 1", true, 0L),
            (default(BarPlace).ToString(), default(BarPlace).IsDownbeat, default(BarPlace).Bar)
        );
}
