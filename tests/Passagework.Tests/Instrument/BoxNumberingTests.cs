using Passagework.Instrument;

namespace Passagework.Tests.Instrument;

public class BoxNumberingTests
{
    [Fact]
    public void Default_numbering_is_ours()
    {
        Assert.Equal(4, default(BoxNumbering).Shown(4, 5));
        Assert.Equal(4, default(BoxNumbering).Read(4, 5));
        Assert.Equal(1, default(BoxNumbering).NumberOfRootBox);
    }

    [Fact]
    public void Shown_counts_round_from_the_number_of_the_root_box()
    {
        // A teacher who counts from the lowest box of A minor on the neck calls the root box 2.
        var teacher = BoxNumbering.WithRootBox(2);

        Assert.Equal([2, 3, 4, 5, 1], Enumerable.Range(1, 5).Select(box => teacher.Shown(box, 5)));
    }

    [Fact]
    public void Read_undoes_shown()
    {
        var teacher = BoxNumbering.WithRootBox(4);

        Assert.Equal(
            [1, 2, 3, 4, 5, 6, 7],
            Enumerable.Range(1, 7).Select(box => teacher.Read(teacher.Shown(box, 7), 7))
        );
    }

    [Fact]
    public void WithRootBox_rejects_zero() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BoxNumbering.WithRootBox(0));
}
