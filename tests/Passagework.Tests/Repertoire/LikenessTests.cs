using CsCheck;
using Passagework.Repertoire;

namespace Passagework.Tests.Repertoire;

/// <summary>Worked values: plain arithmetic on shares, worked by hand for the project.</summary>
public class LikenessTests
{
    private static readonly Gen<Distribution<MoveClass>> Any = Gen.Char['a', 'e']
        .Array[1, 20]
        .Select(letters => Tunes.Counts(string.Concat(letters)));

    [Fact]
    public void Two_classes_against_three()
    {
        var (e, r) = (Tunes.Counts("ab"), Tunes.Counts("aabc"));

        Assert.Equal(0.8660, Likeness.Cosine(e, r) ?? -1, 0.00005);
        Assert.Equal(0.1556, Likeness.Divergence(e, r) ?? -1, 0.00005);
        Assert.Equal(0.3945, Math.Sqrt(Likeness.Divergence(e, r) ?? -1), 0.00005);
        Assert.Equal(0.75, Likeness.Overlap(e, r) ?? -1, 1e-12);
    }

    [Fact]
    public void Exercise_against_repertoire_overlaps_by_the_smaller_shares() =>
        Assert.Equal(
            0.70,
            Likeness.Overlap(Tunes.Counts("aaaaabbbxx"), Tunes.Counts("aaaabbbccd")) ?? -1,
            1e-12
        );

    [Fact]
    public void Nothing_in_common()
    {
        var (a, b) = (Tunes.Counts("aab"), Tunes.Counts("cd"));

        Assert.Equal(0, Likeness.Overlap(a, b));
        Assert.Equal(0, Likeness.Cosine(a, b));
        Assert.Equal(1, Likeness.Divergence(a, b) ?? -1, 1e-12);
    }

    [Fact]
    public void An_empty_one_is_like_nothing()
    {
        var (some, none) = (Tunes.Counts("a"), Tunes.Counts(""));

        Assert.Null(Likeness.Overlap(some, none));
        Assert.Null(Likeness.Cosine(none, some));
        Assert.Null(Likeness.Divergence(none, none));
    }

    [Fact]
    public void Likeness_is_mutual_bounded_and_whole_with_itself() =>
        Gen.Select(Any, Any)
            .Sample(
                (a, b) =>
                {
                    Assert.Equal(Likeness.Divergence(a, b) ?? -1, Likeness.Divergence(b, a) ?? -2, 1e-12);
                    Assert.Equal(Likeness.Overlap(a, b) ?? -1, Likeness.Overlap(b, a) ?? -2, 1e-12);
                    Assert.InRange(Likeness.Divergence(a, b) ?? -1, -1e-12, 1 + 1e-12);
                    Assert.InRange(Likeness.Cosine(a, b) ?? -1, 0, 1 + 1e-12);
                    Assert.Equal(0, Likeness.Divergence(a, a) ?? -1, 1e-12);
                    Assert.Equal(1, Likeness.Cosine(a, a) ?? -1, 1e-12);
                }
            );
}
