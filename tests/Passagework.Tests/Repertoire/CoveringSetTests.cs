using Passagework.Repertoire;

namespace Passagework.Tests.Repertoire;

public class CoveringSetTests
{
    private static readonly (string, Distribution<MoveClass>)[] Worked =
    [
        ("big", Tunes.Counts("abcghij")),
        ("small", Tunes.Counts("dek")),
        ("smaller", Tunes.Counts("fl")),
        ("first half", Tunes.Counts("abcdef")),
        ("second half", Tunes.Counts("ghijkl")),
    ];

    [Fact]
    public void The_fewest_exercises_for_a_piece()
    {
        var set = Covered(Tunes.Counts("abcdefghijkl"), Worked);

        Assert.Equal(["first half", "second half"], set.Exercises);
        Assert.Equal((12, true, 1.0), (set.Wanted, set.IsSmallest, set.Factor));
        Assert.Empty(set.Missing);
    }

    [Fact]
    public void Moves_that_no_exercise_holds_are_said()
    {
        var set = Covered(Tunes.Counts("abyz"), Worked);

        Assert.Equal([.. "yz".Select(Tunes.Class)], set.Missing);
        Assert.Equal(["big"], set.Exercises);
    }

    [Fact]
    public void Kinds_below_the_least_share_do_not_count()
    {
        var piece = Tunes.Counts(new string('a', 99) + "k");

        Assert.Equal(["big"], Covered(piece, Worked, 0.02).Exercises);
        Assert.Equal(["big", "second half"], Covered(piece, Worked, 0.01).Exercises);
    }

    [Fact]
    public void The_order_of_the_exercises_does_not_matter()
    {
        var piece = Tunes.Counts("abcd");
        (string, Distribution<MoveClass>)[] exercises =
        [
            ("one", Tunes.Counts("ab")),
            ("two", Tunes.Counts("cd")),
            ("three", Tunes.Counts("ac")),
            ("four", Tunes.Counts("bd")),
        ];

        Assert.Equal(["four", "three"], Covered(piece, exercises).Exercises);
        Assert.Equal(["four", "three"], Covered(piece, exercises.Reverse()).Exercises);
    }

    [Fact]
    public void More_than_sixty_four_exercises_are_gathered_greedily_with_the_bound()
    {
        var many = Enumerable.Range(0, 60).Select(i => ($"x{i:00}", Tunes.Counts("a")));

        var set = Covered(Tunes.Counts("abcdefghijkl"), Worked.Concat(many));

        Assert.Equal(["big", "first half", "second half"], set.Exercises);
        Assert.False(set.IsSmallest);
        Assert.Equal(2.5929, set.Factor, 0.00005);
    }

    [Fact]
    public void More_than_a_hundred_and_twenty_eight_kinds_are_too()
    {
        var kinds = string.Concat(Enumerable.Range(0, 200).Select(i => (char)('a' + i)));

        var set = Covered(Tunes.Counts(kinds), [("all", Tunes.Counts(kinds))], 0);

        Assert.Equal(["all"], set.Exercises);
        Assert.False(set.IsSmallest);
    }

    [Fact]
    public void Stopped_it_says_that_nothing_is_proved() =>
        Assert.False(
            CoveringSet
                .Of(Tunes.Counts("abcdefghijkl"), Worked, stop: new CancellationToken(canceled: true))
                .IsSmallest
        );

    [Fact]
    public void Nothing_wanted_or_nothing_offered_is_an_empty_set()
    {
        Assert.Empty(Covered(Tunes.Counts(""), Worked).Exercises);
        Assert.Equal(2, Covered(Tunes.Counts("ab"), []).Missing.Length);
    }

    [Fact]
    public void Two_exercises_of_one_name_are_refused() =>
        Assert.Throws<ArgumentException>(() =>
            Covered(Tunes.Counts("a"), [("x", Tunes.Counts("a")), ("x", Tunes.Counts("b"))])
        );

    private static CoveringSet Covered(
        Distribution<MoveClass> piece,
        IEnumerable<(string, Distribution<MoveClass>)> exercises,
        double leastShare = CoveringSet.UsualLeastShare
    ) => CoveringSet.Of(piece, exercises, leastShare, TestContext.Current.CancellationToken);
}
