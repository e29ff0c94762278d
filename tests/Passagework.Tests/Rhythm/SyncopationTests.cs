using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Tests.Rhythm;

public sealed class SyncopationTests
{
    // Gómez, Melvin, Rappaport and Toussaint 2005, figure 8, for the first six; the rest by the definition.
    [Theory]
    [InlineData("shiko", "6/5")]
    [InlineData("son", "14/5")]
    [InlineData("rumba", "18/5")]
    [InlineData("soukous", "18/5")]
    [InlineData("gahu", "18/5")]
    [InlineData("bossa", "4")]
    [InlineData("tresillo", "2/3")]
    [InlineData("cinquillo", "6/5")]
    [InlineData("habanera", "1/2")]
    [InlineData("off-beats", "4")]
    public void BeatDistance_is_the_published_one(string name, string distance)
    {
        var pattern = Patterns.Named(name);

        Assert.Equal(distance, BeatDistance.Of(pattern, Patterns.Beat(pattern)).ToString());
    }

    // A note from 11 to 16 ends on the beat after next, not before it: 4 and not 8 of the total of 18. With the note
    // a pulse shorter the end is before that beat.
    [Fact]
    public void BeatDistance_doubles_only_for_an_end_strictly_before_the_beat_after_next()
    {
        Assert.Equal("18/5", BeatDistance.Of(OnsetPattern.Of(16, 0, 3, 6, 10, 11), 4).ToString());
        Assert.Equal("13/3", BeatDistance.Of(OnsetPattern.Of(16, 0, 3, 6, 10, 11, 15), 4).ToString());
    }

    // Gómez et al. 2005, figure 11: twelve pulses, four beats of three, seven onsets.
    [Theory]
    [InlineData("x.x.x.x.xx.x", 1, "15/7")]
    [InlineData("x.x.x.xx.x.x", 2, "15/7")]
    [InlineData("x.x.xx.x.x.x", 3, "3")]
    [InlineData("xx.x.xx.x.x.", 2, "15/7")]
    [InlineData("x.x.xx.x.xx.", 2, "3")]
    [InlineData("x.xx.xx.x.x.", 1, "15/7")]
    [InlineData("x.x.x.xx.xx.", 1, "15/7")]
    [InlineData("xxx.x.x.x.x.", 1, "3")]
    [InlineData("x.xx.x.x.xx.", 2, "15/7")]
    [InlineData("x.xx.x.xx.x.", 2, "3")]
    public void BeatDistance_and_off_beatness_of_twelve_pulses_are_the_published_ones(
        string box,
        int offBeatness,
        string distance
    )
    {
        Assert.Equal(offBeatness, OffBeatness.Of(Patterns.Box(box)));
        Assert.Equal(distance, BeatDistance.Of(Patterns.Box(box), 3).ToString());
    }

    // Gómez et al. 2005, figure 8, for off-beatness and the reduced form of the first six; sums by the definition.
    [Theory]
    [InlineData("shiko", 0, 1, 3)]
    [InlineData("son", 1, 2, 6)]
    [InlineData("rumba", 2, 2, 6)]
    [InlineData("soukous", 2, 3, 8)]
    [InlineData("gahu", 1, 3, 9)]
    [InlineData("bossa", 2, 3, 9)]
    [InlineData("tresillo", 1, 1, 3)]
    [InlineData("cinquillo", 2, 1, 3)]
    [InlineData("habanera", 1, 0, 1)]
    [InlineData("off-beats", 4, 4, 12)]
    public void OffBeatness_and_Keith_are_the_published_ones(
        string name,
        int offBeatness,
        int reduced,
        int sum
    )
    {
        var pattern = Patterns.Named(name);

        Assert.Equal(offBeatness, OffBeatness.Of(pattern));
        Assert.Equal(reduced, Keith.Reduced(pattern));
        Assert.Equal(sum, Keith.Sum(pattern));
    }

    [Fact]
    public void Keith_is_not_defined_beside_powers_of_two() =>
        Assert.Equal(
            (null, null),
            (Keith.Sum(Patterns.Box("x.x.xx.x.x.x")), Keith.Reduced(Patterns.Box("x.x.xx.x.x.x")))
        );

    [Fact]
    public void OffBeatness_depends_on_the_written_grid() =>
        Assert.Equal(
            (0, 2),
            (OffBeatness.Of(Patterns.Named("shiko")), OffBeatness.Of(OnsetPattern.Of(8, 0, 2, 3, 5, 6)))
        );

    [Theory]
    [InlineData("shiko", 2)]
    [InlineData("son", 4)]
    [InlineData("rumba", 5)]
    [InlineData("soukous", 6)]
    [InlineData("gahu", 5)]
    [InlineData("bossa", 6)]
    [InlineData("tresillo", 2)]
    [InlineData("cinquillo", 2)]
    [InlineData("habanera", 1)]
    [InlineData("off-beats", 7)]
    public void MetricalComplexity_is_what_the_strongest_places_would_add(string name, int complexity)
    {
        var pattern = Patterns.Named(name);

        Assert.Equal(complexity, MetricalComplexity.Of(pattern, Patterns.Bar(pattern)));
    }

    [Theory]
    [InlineData("shiko", "6")]
    [InlineData("son", "29/2")]
    [InlineData("rumba", "17")]
    [InlineData("soukous", "15")]
    [InlineData("gahu", "39/2")]
    [InlineData("bossa", "22")]
    [InlineData("tresillo", "19/2")]
    [InlineData("cinquillo", "10")]
    [InlineData("habanera", "11/2")]
    [InlineData("off-beats", "20")]
    public void Pressing_adds_up_over_the_beats(string name, string cost) =>
        Assert.Equal(cost, Pressing.Of(Patterns.Named(name))?.ToString());

    // One beat each; x... is a beat with nothing to say, and so is a silent one, seen here after it.
    [Theory]
    [InlineData("x...", "0")]
    [InlineData("x...x..x", "9/2")]
    [InlineData("x....x..", "15/2")]
    [InlineData("x....xx.", "15/2")]
    [InlineData("x...x.x.", "1")]
    [InlineData("x...xx..", "5/2")]
    [InlineData("x....x.x", "10")]
    [InlineData("x....xxx", "8")]
    [InlineData("x...xxxx", "2")]
    [InlineData("x...x.xx", "5/2")]
    [InlineData("x.....x.", "5")]
    [InlineData("x......x", "15/2")]
    [InlineData("x...xx.x", "5")]
    [InlineData("x...xxx.", "5/2")]
    [InlineData("x.....xx", "11/2")]
    [InlineData("x.......", "0")]
    public void Pressing_of_one_beat_is_that_of_the_table(string box, string cost) =>
        Assert.Equal(cost, Pressing.Of(Patterns.Box(box))?.ToString());

    [Fact]
    public void Pressing_is_not_defined_beside_beats_of_four() =>
        Assert.Null(Pressing.Of(Patterns.Box("x.x.x.")));

    [Theory]
    [InlineData("shiko", 2)]
    [InlineData("son", 4)]
    [InlineData("rumba", 6)]
    [InlineData("soukous", 6)]
    [InlineData("gahu", 5)]
    [InlineData("bossa", 6)]
    [InlineData("tresillo", 2)]
    [InlineData("cinquillo", 2)]
    [InlineData("off-beats", 7)]
    public void LonguetHigginsLee_adds_up_the_rests_that_are_stronger(string name, int total)
    {
        var pattern = Patterns.Named(name);

        var found = Assert.NotNull(LonguetHigginsLee.Of(pattern, Patterns.Bar(pattern)));

        Assert.Equal(total, found.Total);
        Assert.NotEqual(0, found.Pairs);
    }

    [Fact]
    public void LonguetHigginsLee_finds_the_two_pairs_of_son() =>
        Assert.Equal(
            new SyncopationSum(Pairs: 2, Total: 4),
            LonguetHigginsLee.Of(Patterns.Named("son"), MetricalTree.Of(2, 2, 2, 2))
        );

    // The worked example of public research code: bar 1 0 0 1 0 1 1 0 in 2/4.
    [Fact]
    public void LonguetHigginsLee_gives_the_worked_example() =>
        Assert.Equal(2, LonguetHigginsLee.Of(Patterns.Box("x..x.xx."), MetricalTree.Of(2, 2, 2))?.Total);

    [Fact]
    public void LonguetHigginsLee_tells_no_pair_apart_from_pairs_of_equal_weight()
    {
        var bar = MetricalTree.Of(2, 2, 2);

        Assert.Equal(new SyncopationSum(0, 0), LonguetHigginsLee.Of(Patterns.Named("habanera"), bar));
        Assert.Equal(
            new SyncopationSum(1, 0),
            LonguetHigginsLee.Of(OnsetPattern.Of(3, 0, 1), MetricalTree.Of(3))
        );
    }

    [Fact]
    public void Measures_on_a_tree_are_not_defined_where_it_does_not_fit_the_cycle()
    {
        var twenty = OnsetPattern.OfGroups([5], 20);
        var sixteen = MetricalTree.Of(2, 2, 2, 2);

        Assert.Equal(20, twenty.Pulses);
        Assert.Null(LonguetHigginsLee.Of(twenty, sixteen));
        Assert.Null(MetricalComplexity.Of(twenty, sixteen));
    }

    // Toussaint, The Geometry of Musical Rhythm, 2013, figure 17.13, one decimal.
    [Theory]
    [InlineData("shiko", 66.7, 4)]
    [InlineData("son", 40.5, 5)]
    [InlineData("rumba", 41.0, 6)]
    [InlineData("soukous", 70.5, 7)]
    [InlineData("gahu", 23.8, 7)]
    [InlineData("bossa", 14.3, 4)]
    public void OnsetSpacing_is_the_published_one(string name, double variability, int distances)
    {
        var pattern = Patterns.Named(name);

        Assert.Equal(variability, Assert.NotNull(OnsetSpacing.PairwiseVariability(pattern)), 0.05);
        Assert.Equal(distances, OnsetSpacing.DistinctDistances(pattern));
    }

    [Fact]
    public void OnsetSpacing_of_a_single_onset_has_nothing_to_compare() =>
        Assert.Null(OnsetSpacing.PairwiseVariability(OnsetPattern.Of(16, 0)));
}
