using CsCheck;
using Passagework.Repertoire;

namespace Passagework.Tests.Repertoire;

public class DistributionTests
{
    // e to the entropy of 0.5, 0.3, 0.2 and of 0.4, 0.3, 0.2, 0.1, worked by hand.
    [Theory]
    [InlineData(2.800, "aaaaabbbxx")]
    [InlineData(3.596, "aaaabbbccd")]
    [InlineData(1, "aaa")]
    [InlineData(0, "")]
    public void Effective_number_of_classes(double expected, string letters) =>
        Assert.Equal(expected, Tunes.Counts(letters).EffectiveNumber, 0.0005);

    [Fact]
    public void Shares_are_counts_over_all()
    {
        var counts = Tunes.Counts("abab b");

        Assert.Equal(6, counts.Total);
        Assert.Equal(3, counts.CountOf(Tunes.Class('b')));
        Assert.Equal(0.5, counts.ShareOf(Tunes.Class('b')));
        Assert.Equal(0, counts.ShareOf(Tunes.Class('z')));
    }

    [Fact]
    public void Classes_stand_in_their_own_order() =>
        Assert.Equal([.. "abc".Select(Tunes.Class)], Tunes.Counts("cabca").Classes);

    [Fact]
    public void Pieces_together_weigh_by_their_length()
    {
        var together = Distribution<MoveClass>.Together([Tunes.Counts("aab"), Tunes.Counts("b")]);

        Assert.Equal(0.5, together.ShareOf(Tunes.Class('b')));
        Assert.Equal(4, together.Total);
    }

    [Fact]
    public void Merged_classes_add_their_counts()
    {
        var merged = Tunes.Counts("abc").Merged(each => each == Tunes.Class('c') ? Tunes.Class('a') : each);

        Assert.Equal(2, merged.CountOf(Tunes.Class('a')));
        Assert.Equal(0, merged.CountOf(Tunes.Class('c')));
    }

    [Fact]
    public void Nothing_depends_on_the_order_of_what_is_counted() =>
        Gen.Char['a', 'f']
            .Array[1, 30]
            .Sample(letters =>
            {
                var there = Tunes.Counts(string.Concat(letters));
                var back = Tunes.Counts(string.Concat(letters.Reverse()));

                Assert.Equal(there.Classes, back.Classes);
                Assert.Equal(there.EffectiveNumber, back.EffectiveNumber);
            });
}
