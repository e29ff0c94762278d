using System.Collections.Immutable;
using CsCheck;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Tests.Rhythm;

public sealed class GroupFitTests
{
    [Fact]
    public void Of_groups_of_five_in_sixteenths_says_all_about_them()
    {
        var fit = Of("4/4", 4, Beats.Groups(5, 5, 5, 5, 5, 5, 5, 5));

        Assert.Equal((5L, 5L), (fit.BeatsToRealign, fit.BarsToRealign));
        Assert.Equal("0000030", string.Concat(fit.Feels.Select(feel => (int)feel.Grade)));
        Assert.Equal("1/7", fit.ComesOutEven.ToString());
        Assert.Equal("1/7", fit.Ease.ToString());
        Assert.Equal("1", fit.Ambiguity?.ToString());
        Assert.Equal("1/4", fit.StartsOnBeat.ToString());
        Assert.Equal("beat 3", fit.Closing.ToString());
        Assert.Equal("accents visit every part of the beat; needs five bars to come home", fit.Sentence);
    }

    [Theory]
    [InlineData(3, "3 3", "1", "10/21")]
    [InlineData(4, "1 1", "1", "5/7")]
    [InlineData(5, "5 5", "1/7", "1/7")]
    [InlineData(6, "3 3", "1", "5/7")]
    [InlineData(7, "7 7", "0", "0")]
    [InlineData(8, "2 1", "1", "5/7")]
    public void Of_equal_groups_in_sixteenths_realigns_and_comes_out(
        int group,
        string home,
        string even,
        string ease
    )
    {
        var fit = Of("4/4", 4, Beats.Groups(group, group, group));

        Assert.Equal(home, FormattableString.Invariant($"{fit.BeatsToRealign} {fit.BarsToRealign}"));
        Assert.Equal(even, fit.ComesOutEven.ToString());
        Assert.Equal(ease, fit.Ease.ToString());
    }

    // One accent: the mean of 1/gcd(length, m) over m = 2, 3, 4, 6.
    [Theory]
    [InlineData(2, "5/8")]
    [InlineData(3, "2/3")]
    [InlineData(4, "9/16")]
    [InlineData(5, "1")]
    [InlineData(6, "3/8")]
    [InlineData(7, "1")]
    [InlineData(8, "9/16")]
    public void Ambiguity_with_one_accent_hangs_on_the_length(int group, string ambiguity) =>
        Assert.Equal(ambiguity, Of("4/4", 4, Beats.Groups(group, group)).Ambiguity?.ToString());

    [Theory]
    [InlineData(5, "0 2", "1")]
    [InlineData(6, "0 2", "1/2")]
    [InlineData(5, "0 3", "1")]
    [InlineData(6, "0 3", "2/3")]
    public void Ambiguity_with_two_accents_counts_the_places_of_both(
        int group,
        string accents,
        string ambiguity
    )
    {
        var shape = Beats.Group(group, [.. accents.Split(' ').Select(int.Parse)]);

        Assert.Equal(ambiguity, Of("4/4", 4, [shape, shape]).Ambiguity?.ToString());
    }

    [Fact]
    public void Ambiguity_of_unequal_groups_takes_one_pass_and_its_starts() =>
        Assert.Equal("15/16", Of("4/4", 4, Beats.Groups(3, 3, 2)).Ambiguity?.ToString());

    // Accents at 0 and 4 of 8 stay at one place of a beat in two or four; in three they visit all, in six all even ones.
    [Fact]
    public void Ambiguity_of_unequal_groups_takes_the_accents_given() =>
        Assert.Equal("9/16", Of("4/4", 4, [Beats.Group(3, 0), Beats.Group(5, 1)]).Ambiguity?.ToString());

    // Slow twin: walk from group to group until every division has come round.
    [Fact]
    public void Ambiguity_equals_walking_over_the_accents() =>
        Gen.Int[1, 9]
            .Array[1, 5]
            .Select(Gen.Int[0, 8].Array[0, 3])
            .Sample(
                (lengths, marks) =>
                {
                    var groups = lengths
                        .Select(length =>
                            Beats.Group(length, [.. marks.Where(mark => mark < length).Distinct().Order()])
                        )
                        .ToArray();
                    var accents = Pass.OfAccents(groups);
                    Assert.NotNull(accents);

                    Assert.Equal(SlowAmbiguity(groups), Passagework.Rhythm.Ambiguity.Of(accents));
                },
                iter: 2000
            );

    [Fact]
    public void Ambiguity_of_groups_of_one_note_is_missing()
    {
        GroupShape single = new(Fraction.One, 1, []);
        GroupShape longSingle = new(Fraction.Of(3), 1, []);

        var fit = Of("4/4", 4, [single, single, single]);

        Assert.Null(fit.Ambiguity);
        Assert.Null(fit.Sentence);
        Assert.Equal(1, fit.BarsToRealign);
        Assert.Null(Of("4/4", 4, [longSingle, longSingle]).Ambiguity);
        Assert.NotNull(Of("4/4", 4, [single, Beats.Group(2)]).Ambiguity);
    }

    [Fact]
    public void Ambiguity_is_missing_where_an_accent_is_on_no_pulse()
    {
        GroupShape between = new(Fraction.Of(2), 3, [Fraction.Of(1, 2)]);
        GroupShape outside = new(Fraction.Of(2), 2, [Fraction.Of(2)]);

        Assert.Null(Of("4/4", 4, [between, between]).Ambiguity);
        Assert.Null(Of("4/4", 4, [outside, outside]).Ambiguity);
    }

    [Theory]
    [InlineData("")]
    [InlineData("5/2 5/2")]
    [InlineData("3 0")]
    [InlineData("3 -3")]
    [InlineData("1000001")]
    [InlineData("600000 600001")]
    [InlineData("9223372036854775807 9223372036854775807")]
    public void Of_says_nothing_without_groups_of_whole_pulses(string lengths)
    {
        var groups = lengths
            .Split(' ', StringSplitOptions.RemoveEmptyEntries)
            .Select(length => new GroupShape(Beats.Fraction(length), 2, []))
            .ToArray();

        Assert.Null(GroupFit.Of(groups, default, 4));
    }

    [Fact]
    public void Of_unequal_groups_realigns_with_the_whole_pass()
    {
        var fit = Of("4/4", 4, Beats.Groups(5, 5, 4));

        Assert.Equal((7L, 7L), (fit.BeatsToRealign, fit.BarsToRealign));
        Assert.Equal("1/3", fit.StartsOnBeat.ToString());
        Assert.Equal("off (+2 of 4)", fit.Closing.ToString());
    }

    [Theory]
    [InlineData("6/8", 3, 5, 5, 5)]
    [InlineData("6/8", 6, 4, 2, 1)]
    [InlineData("5/8", 2, 5, 5, 1)]
    [InlineData("3/4", 4, 3, 3, 1)]
    [InlineData("2/4", 2, 3, 3, 3)]
    public void Of_equal_groups_counts_felt_beats(string meter, int perBeat, int group, long beats, long bars)
    {
        var fit = Of(meter, perBeat, Beats.Groups(group, group));

        Assert.Equal((beats, bars), (fit.BeatsToRealign, fit.BarsToRealign));
    }

    [Theory]
    [InlineData(
        "4/4",
        3,
        "accents visit every part of the beat in eighths and sixteenths, one in triplets; home within three bars"
    )]
    [InlineData(
        "4/4",
        2,
        "accents visit every part of the beat in triplets, one in eighths, two in sixteenths; home within one bar"
    )]
    [InlineData(
        "4/4",
        4,
        "accents visit every part of the beat in triplets, one in eighths and sixteenths; home within one bar"
    )]
    [InlineData("4/4", 5, "accents visit every part of the beat; needs five bars to come home")]
    [InlineData(
        "4/4",
        6,
        "accents visit one part of the beat in eighths and triplets, two in sixteenths; home within three bars"
    )]
    [InlineData("4/4", 7, "accents visit every part of the beat; needs seven bars to come home")]
    [InlineData(
        "4/4",
        8,
        "accents visit every part of the beat in triplets, one in eighths and sixteenths; home within two bars"
    )]
    [InlineData("4/4", 12, "accents visit one part of the beat; home within three bars")]
    [InlineData("4/4", 13, "accents visit every part of the beat; needs 13 bars to come home")]
    [InlineData(
        "4/4",
        16,
        "accents visit every part of the beat in triplets, one in eighths and sixteenths; home within four bars"
    )]
    [InlineData("5/4", 5, "accents visit every part of the beat; home within one bar")]
    [InlineData(
        "12/8",
        3,
        "accents visit every part of the beat in duplets, one in eighths, two in sixteenths; home within three bars"
    )]
    [InlineData(
        "5/8",
        3,
        "accents visit every part of the beat in sixteenths and thirty-seconds, one in triplets; home within three bars"
    )]
    [InlineData(
        "2/2",
        4,
        "accents visit every part of the beat in triplets, one in quarters and eighths; home within two bars"
    )]
    public void Sentence_says_both_measures_in_the_words_of_the_metre(
        string meter,
        int group,
        string sentence
    ) => Assert.Equal(sentence, Of(meter, 4, Beats.Groups(group, group)).Sentence);

    [Fact]
    public void Sentence_names_several_places_before_it_names_one()
    {
        var fit = Of("4/4", 4, [Beats.Group(12, 0, 1), Beats.Group(12, 0, 1)]);

        Assert.Equal(
            "accents visit every part of the beat in eighths, two in triplets and sixteenths; home within three bars",
            fit.Sentence
        );
    }

    [Fact]
    public void Of_refuses_less_than_a_note_a_beat() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => GroupFit.Of([], default, 0));

    private static GroupFit Of(string meter, int perBeat, GroupShape[] groups) =>
        GroupFit.Of(groups, Beats.Meter(meter), perBeat)
        ?? throw new ArgumentException("No fit.", nameof(groups));

    private static Fraction SlowAmbiguity(GroupShape[] groups)
    {
        var share = Fraction.Zero;
        foreach (var places in ImmutableArray.Create(2, 3, 4, 6))
        {
            var visited = new HashSet<long>();
            var at = 0L;
            do
            {
                foreach (var group in groups)
                {
                    visited.UnionWith(
                        group.Accents.DefaultIfEmpty().Select(accent => (at + accent.Numerator) % places)
                    );
                    at += group.Pulses.Numerator;
                }
            } while (at % places != 0);

            share += Fraction.Of(visited.Count, places * 4);
        }

        return share;
    }
}
