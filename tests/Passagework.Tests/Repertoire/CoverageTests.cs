using Passagework.Repertoire;

namespace Passagework.Tests.Repertoire;

/// <summary>Worked values: plain arithmetic on shares, worked by hand for the project.</summary>
public class CoverageTests
{
    private const string Exercise = "aaaaabbbxx";
    private const string Music = "aaaabbbccd";

    [Theory]
    [InlineData(0.75, "aabc", "ab")]
    [InlineData(1.00, "ab", "aabc")]
    [InlineData(0.80, Exercise, Music)]
    [InlineData(0.70, Music, Exercise)]
    [InlineData(0, "a", "b")]
    [InlineData(0, "a", "")]
    public void Share_of_what_is_wanted(double expected, string wanted, string practised) =>
        Assert.Equal(expected, Of(wanted, practised) ?? -1, 1e-12);

    [Fact]
    public void Nothing_wanted_has_no_share() => Assert.Null(Of("", "ab"));

    [Theory]
    [InlineData(0.7, 3)]
    [InlineData(0.4, 3.5)]
    [InlineData(0, 6)]
    public void Only_what_occurs_often_enough_is_practised(double expected, double leastCount) =>
        Assert.Equal(
            expected,
            Coverage.Of(Tunes.Counts(Music), Tunes.Counts(Exercise), leastCount) ?? -1,
            1e-12
        );

    // Wanted a 4, b 3, c 2, d 1; c weighs 3, the rest 1: (4 + 3) / (4 + 3 + 6 + 1).
    [Fact]
    public void Hard_classes_may_weigh_more() =>
        Assert.Equal(
            0.5,
            Coverage.Weighted(
                Tunes.Counts(Music),
                Tunes.Counts(Exercise),
                each => each == Tunes.Class('c') ? 3 : 1
            )
        );

    private static double? Of(string wanted, string practised) =>
        Coverage.Of(Tunes.Counts(wanted), Tunes.Counts(practised));
}
