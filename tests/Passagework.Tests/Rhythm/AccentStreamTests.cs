using CsCheck;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Tests.Rhythm;

/// <summary>Equal groups in 4/4 over one full realignment: their starts as a pattern of accents.</summary>
public sealed class AccentStreamTests
{
    // Group, notes a beat, bars, starts, share on the beat, note-to-beat distance, then per bar: syncopation, complexity.
    [Theory]
    [InlineData(3, 2, 3, 8, "1/2", "1", "10/3", "10/3")]
    [InlineData(5, 2, 5, 8, "1/2", "1", "16/5", "14/5")]
    [InlineData(6, 2, 3, 4, "1", "0", "4/3", "4/3")]
    [InlineData(7, 2, 7, 8, "1/2", "1", "24/7", "16/7")]
    [InlineData(4, 3, 1, 3, "1/3", "3", "3", "3")]
    [InlineData(5, 3, 5, 12, "1/3", "2", "24/5", "4")]
    [InlineData(7, 3, 7, 12, "1/3", "2", "30/7", "24/7")]
    [InlineData(3, 4, 3, 16, "1/4", "4", "22/3", "22/3")]
    [InlineData(5, 4, 5, 16, "1/4", "4", "36/5", "32/5")]
    [InlineData(6, 4, 3, 8, "1/2", "1", "10/3", "10/3")]
    [InlineData(7, 4, 7, 16, "1/4", "5/2", "54/7", "38/7")]
    [InlineData(3, 5, 3, 20, "1/5", "9/2", "14/3", "14/3")]
    [InlineData(4, 5, 1, 5, "1/5", "5", "4", "4")]
    [InlineData(6, 5, 3, 10, "1/5", "5", "14/3", "14/3")]
    [InlineData(7, 5, 7, 20, "1/5", "9/2", "38/7", "34/7")]
    [InlineData(3, 6, 1, 8, "1/2", "1", "4", "4")]
    [InlineData(4, 6, 1, 6, "1/3", "3", "2", "2")]
    [InlineData(5, 6, 5, 24, "1/6", "17/3", "52/5", "8")]
    [InlineData(7, 6, 7, 24, "1/6", "17/3", "66/7", "50/7")]
    [InlineData(3, 3, 1, 4, "1", "0", "0", "0")]
    [InlineData(4, 2, 1, 2, "1", "0", "0", "0")]
    [InlineData(4, 4, 1, 4, "1", "0", "0", "0")]
    [InlineData(5, 5, 1, 4, "1", "0", "0", "0")]
    [InlineData(6, 3, 1, 2, "1", "0", "0", "0")]
    [InlineData(6, 6, 1, 4, "1", "0", "0", "0")]
    public void Group_starts_measure_as_the_table_says(
        int group,
        int perBeat,
        int bars,
        int starts,
        string onBeat,
        string distance,
        string syncopation,
        string complexity
    )
    {
        var bar = MetricalTree.Of(default, perBeat);

        var pattern = OnsetPattern.OfGroups([group], bar.Pulses);
        var found = Assert.NotNull(LonguetHigginsLee.Of(pattern, bar));
        var above = Assert.NotNull(MetricalComplexity.Of(pattern, bar));

        Assert.Equal(bars * bar.Pulses, pattern.Pulses);
        Assert.Equal(starts, pattern.Onsets.Length);
        Assert.Equal(onBeat, pattern.OnBeat(perBeat).ToString());
        Assert.Equal(distance, BeatDistance.Of(pattern, perBeat).ToString());
        Assert.Equal(syncopation, Fraction.Of(found.Total, bars).ToString());
        Assert.Equal(complexity, Fraction.Of(above, bars).ToString());
    }

    [Fact]
    public void Displaced_by_a_whole_bar_a_stream_measures_the_same()
    {
        var pattern = OnsetPattern.OfGroups([5], 16);
        var moved = pattern.Displaced(32);
        var bar = MetricalTree.Of(2, 2, 2, 2);

        Assert.NotEqual(pattern, moved.Displaced(1));
        Assert.Equal(LonguetHigginsLee.Of(pattern, bar), LonguetHigginsLee.Of(moved, bar));
        Assert.Equal(MetricalComplexity.Of(pattern, bar), MetricalComplexity.Of(moved, bar));
        Assert.Equal(BeatDistance.Of(pattern, 4), BeatDistance.Of(moved, 4));
        Assert.Equal(Pressing.Of(pattern), Pressing.Of(moved));
    }

    [Fact]
    public void Displaced_by_whole_bars_any_pattern_measures_the_same() =>
        Gen.Int[0, 47]
            .Array[1, 20]
            .Select(Gen.Int[-4, 4])
            .Sample(
                (onsets, bars) =>
                {
                    var pattern = OnsetPattern.Of(48, [.. onsets.Distinct().Order()]);
                    var moved = pattern.Displaced(16 * bars);
                    var bar = MetricalTree.Of(2, 2, 2, 2);

                    Assert.Equal(LonguetHigginsLee.Of(pattern, bar), LonguetHigginsLee.Of(moved, bar));
                    Assert.Equal(MetricalComplexity.Of(pattern, bar), MetricalComplexity.Of(moved, bar));
                    Assert.Equal(BeatDistance.Of(pattern, 4), BeatDistance.Of(moved, 4));
                    Assert.Equal(Pressing.Of(pattern), Pressing.Of(moved));
                    Assert.Equal(pattern, moved.Displaced(-16 * bars));
                }
            );

    [Fact]
    public void Displaced_moves_and_wraps_the_onsets() =>
        Assert.Equal([1, 2, 5], OnsetPattern.Of(8, 0, 3, 7).Displaced(2).Onsets);

    [Fact]
    public void OfGroups_passes_through_unequal_groups_until_the_downbeat()
    {
        var pattern = OnsetPattern.OfGroups([3, 3, 2], 16);

        Assert.Equal(16, pattern.Pulses);
        Assert.Equal([0, 3, 6, 8, 11, 14], pattern.Onsets);
    }

    [Fact]
    public void Of_refuses_what_is_no_pattern()
    {
        Assert.Throws<ArgumentException>(() => OnsetPattern.Of(16));
        Assert.Throws<ArgumentException>(() => OnsetPattern.Of(16, 3, 3));
        Assert.Throws<ArgumentException>(() => OnsetPattern.Of(16, 0, 16));
        Assert.Throws<ArgumentException>(() => OnsetPattern.Of(16, -1, 4));
        Assert.Throws<ArgumentException>(() => OnsetPattern.OfGroups([], 16));
        Assert.Throws<ArgumentException>(() => OnsetPattern.OfGroups([3, 0], 16));
        Assert.Throws<ArgumentException>(() => OnsetPattern.OfGroups([999_983], 16));
    }
}
