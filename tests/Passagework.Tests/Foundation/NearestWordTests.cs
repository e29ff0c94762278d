using CsCheck;
using Passagework.Foundation;

namespace Passagework.Tests.Foundation;

public sealed class NearestWordTests
{
    private static readonly string[] Words =
    [
        "minor pentatonic",
        "major pentatonic",
        "minor blues",
        "dorian",
        "lydian",
    ];

    [Theory]
    [InlineData("minor pentatonic", "minor pentatonik")]
    [InlineData("minor pentatonic", "Minor Pentatonic")]
    [InlineData("major pentatonic", "majro pentatonic")]
    [InlineData("dorian", "dorain")]
    [InlineData("dorian", "doran")]
    [InlineData("lydian", "lydiann")]
    [InlineData("dorian", "dorixx")]
    [InlineData(null, "dorxxx")]
    [InlineData(null, "whole tone")]
    [InlineData(null, "")]
    [InlineData(null, "x")]
    public void Find_gives_the_word_that_was_meant(string? word, string written) =>
        Assert.Equal(word, NearestWord.Find(written, Words));

    [Fact]
    public void Find_counts_a_swap_of_neighbours_as_one_change() =>
        Assert.Equal("ab", NearestWord.Find("ba", ["xy", "ab"]));

    [Fact]
    public void Find_takes_the_first_of_equally_near_words() =>
        Assert.Equal("cat", NearestWord.Find("bat", ["cat", "hat"]));

    [Fact]
    public void Find_has_nothing_among_nothing() => Assert.Null(NearestWord.Find("dorian", []));

    [Fact]
    public void Find_does_not_dwell_on_endless_words() =>
        Assert.Null(NearestWord.Find(new string('a', 50_000_000), Words));

    [Fact]
    public void Hint_asks_back_or_lists_what_is_known()
    {
        Assert.Equal("did you mean 'dorian'?", NearestWord.Hint("dorien", Words));
        Assert.Equal("one of: up, down", NearestWord.Hint("sideways", ["up", "down"]));
    }

    [Fact]
    public void Find_gives_a_known_word_itself() =>
        Gen.Int[0, Words.Length - 1]
            .Sample(i => NearestWord.Find(Words[i].ToUpperInvariant(), Words) == Words[i]);
}
