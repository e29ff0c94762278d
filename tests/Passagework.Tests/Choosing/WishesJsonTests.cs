using Passagework.Choosing;
using Passagework.Choosing.Measures;

namespace Passagework.Tests.Choosing;

public sealed class WishesJsonTests
{
    [Fact]
    public void Five_criteria_count_alike_where_nothing_is_said()
    {
        var wishes = WishesJson.Read("""{ "passagework": 1 }""").OrThrow();

        Assert.Equal([0.2, 0.2, 0.2, 0.2, 0.2, 0], Shares(wishes));
        Assert.False(wishes.AreNamed);
    }

    [Fact]
    public void Weights_are_taken_in_proportion_and_what_is_not_named_does_not_count()
    {
        var wishes = WishesJson
            .Read("""{ "passagework": 1, "weights": { "even-load": 30, "comes-out-even": 10 } }""")
            .OrThrow();

        Assert.Equal([0.75, 0, 0, 0, 0, 0.25], Shares(wishes));
        Assert.True(wishes.AreNamed);
    }

    [Fact]
    public void An_order_falls_by_equal_steps()
    {
        var wishes = WishesJson
            .Read("""{ "passagework": 1, "order": ["use-in-music", "even-load"] }""")
            .OrThrow();

        Assert.Equal([1 / 3.0, 0, 0, 2 / 3.0, 0, 0], Shares(wishes), (a, b) => Math.Abs(a - b) < 1e-12);
    }

    [Fact]
    public void Marks_are_further_criteria_that_count_like_the_others()
    {
        var wishes = WishesJson
            .Read("""{ "passagework": 1, "marks": { "fits-my-band": { "groups-of-five": 0.8 } } }""")
            .OrThrow();

        Assert.Equal("fits-my-band", wishes.Criteria[^1].Id);
        Assert.Equal(1 / 6.0, Shares(wishes)[^1], 1e-12);
        Assert.Equal(0.8, wishes.Marks["fits-my-band"]["groups-of-five"]);
    }

    [Fact]
    public void Anchors_may_run_downwards()
    {
        var wishes = WishesJson
            .Read("""{ "passagework": 1, "anchors": { "staying-power": [0.5, 0.1] } }""")
            .OrThrow();

        Assert.Equal(1, wishes.Anchors["staying-power"].ValueOf(0.1), 1e-12);
        Assert.Equal(0.25, wishes.Anchors["staying-power"].ValueOf(0.4), 1e-12);
        Assert.Equal(0, wishes.Anchors["staying-power"].ValueOf(0.6), 1e-12);
    }

    [Theory]
    [InlineData("""{ "weights": { "even-load": 1 } }""", "$: the field 'passagework' is missing")]
    [InlineData("""{ "passagework": 2 }""", "$.passagework: unknown version 2")]
    [InlineData("""{ "passagework": 1, "weight": {} }""", "did you mean 'weights'?")]
    [InlineData("""{ "passagework": 1, "weights": { "even-laod": 1 } }""", "did you mean 'even-load'?")]
    [InlineData(
        """{ "passagework": 1, "weights": { "even-load": -1 } }""",
        "$.weights.even-load: a weight of -1"
    )]
    [InlineData("""{ "passagework": 1, "weights": { "even-load": "much" } }""", "'much' is no number")]
    [InlineData("""{ "passagework": 1, "weights": { "even-load": 0 } }""", "$.weights: no criterion counts")]
    [InlineData("""{ "passagework": 1, "weights": {} }""", "$.weights: no criterion counts")]
    [InlineData("""{ "passagework": 1, "weights": [1, 2] }""", "$.weights: a list is no object")]
    [InlineData("""{ "passagework": 1, "order": [] }""", "$.order: no criterion counts")]
    [InlineData(
        """{ "passagework": 1, "order": ["even-load", "even-load"] }""",
        "$.order[1]: 'even-load' is there twice"
    )]
    [InlineData("""{ "passagework": 1, "order": ["evenload"] }""", "did you mean 'even-load'?")]
    [InlineData("""{ "passagework": 1, "order": [3] }""", "$.order[0]: 3 is no text")]
    [InlineData(
        """{ "passagework": 1, "order": ["even-load"], "weights": { "even-load": 1 } }""",
        "$.order: both weights and an order are given"
    )]
    [InlineData(
        """{ "passagework": 1, "anchors": { "even-load": [0.5, 0.5] } }""",
        "$.anchors.even-load: no range"
    )]
    [InlineData(
        """{ "passagework": 1, "anchors": { "even-load": [0.5] } }""",
        "$.anchors.even-load: no range"
    )]
    [InlineData("""{ "passagework": 1, "anchors": { "loudness": [0, 1] } }""", "unknown field 'loudness'")]
    [InlineData(
        """{ "passagework": 1, "marks": { "even-load": { "trill": 1 } } }""",
        "'even-load' is measured"
    )]
    [InlineData(
        """{ "passagework": 1, "marks": { "my band": { "trill": 1 } } }""",
        "'my band' is no name of a criterion"
    )]
    [InlineData(
        """{ "passagework": 1, "marks": { "fun": { "trill": 1.5 } } }""",
        "$.marks.fun.trill: a mark of 1.5"
    )]
    [InlineData("""{ "passagework": 1, "weights": { "even-load": 1e400 } }""", "is no number")]
    [InlineData("nonsense", "1")]
    [InlineData("", "")]
    public void What_is_wrong_is_told_with_its_place(string text, string expected)
    {
        Assert.False(WishesJson.Read(text).TryGet(out _, out var fault));
        Assert.Contains(expected, fault.ToString(), StringComparison.Ordinal);
    }

    private static double[] Shares(Wishes wishes) =>
        [.. wishes.WeightsOf(wishes.Criteria, []).OrThrow().Shares];
}
