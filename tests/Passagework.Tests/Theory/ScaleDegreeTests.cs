using Passagework.Theory;

namespace Passagework.Tests.Theory;

public sealed class ScaleDegreeTests
{
    [Theory]
    [InlineData("1", 0)]
    [InlineData("b2", 1)]
    [InlineData("#4", 6)]
    [InlineData("b5", 6)]
    [InlineData("bb7", 9)]
    [InlineData("9", 14)]
    [InlineData("#9", 15)]
    [InlineData("13", 21)]
    public void Semitones_count_from_the_root(string text, int semitones)
    {
        Assert.True(ScaleDegree.TryParse(text, out var degree));
        Assert.Equal(semitones, degree.Semitones);
        Assert.Equal(text, degree.ToString());
    }

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("b")]
    [InlineData("0")]
    [InlineData("14")]
    [InlineData("#b3")]
    [InlineData("bbb7")]
    [InlineData("3b")]
    [InlineData("-3")]
    public void TryParse_refuses_what_is_no_degree(string? text) =>
        Assert.False(ScaleDegree.TryParse(text, out _));

    [Fact]
    public void Default_is_the_root() => Assert.Equal("1", default(ScaleDegree).ToString());

    [Fact]
    public void No_two_known_formulas_have_the_same_notes() =>
        Assert.Equal(23, Scales.All.Select(scale => string.Join(' ', scale.Semitones)).Distinct().Count());
}
