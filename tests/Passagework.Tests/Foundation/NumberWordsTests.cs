using Passagework.Foundation;

namespace Passagework.Tests.Foundation;

public sealed class NumberWordsTests
{
    [Theory]
    [InlineData(0, "no bars")]
    [InlineData(1, "one bar")]
    [InlineData(12, "twelve bars")]
    [InlineData(13, "13 bars")]
    [InlineData(-1, "-1 bars")]
    public void Things_are_counted_in_words(long number, string expected) =>
        Assert.Equal(expected, NumberWords.Of(number, "bar"));

    [Theory]
    [InlineData(3, 3, "bar 3")]
    [InlineData(3, 5, "bars 3 to 5")]
    public void Bars_are_named_by_number(int first, int last, string expected) =>
        Assert.Equal(expected, NumberWords.Bars(first, last));

    [Theory]
    [InlineData("", "")]
    [InlineData("élan", "Élan")]
    public void A_sentence_begins_with_a_capital(string text, string expected) =>
        Assert.Equal(expected, NumberWords.Sentence(text));

    [Fact]
    public void A_list_ends_with_and()
    {
        Assert.Equal("", NumberWords.List([]));
        Assert.Equal("eighths", NumberWords.List(["eighths"]));
        Assert.Equal(
            "eighths, triplets and sixteenths",
            NumberWords.List(["eighths", "triplets", "sixteenths"])
        );
    }
}
