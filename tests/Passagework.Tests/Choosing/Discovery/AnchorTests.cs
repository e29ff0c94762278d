using Passagework.Choosing.Discovery;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Tests.Choosing.Discovery;

public class AnchorTests
{
    private static readonly PieceCollection Music = PieceCollection
        .BuiltIn(Player.At(2), Technique.Alternate)
        .OrThrow();

    // Sampled beside the definition of the criteria, 200 cells a length; the rhythm measures are exact.
    [Theory]
    [InlineData("even-load", 0.657, 0.878, 0.02)]
    [InlineData("staying-power", 0.153, 0.222, 0.008)]
    [InlineData("rhythmic-ambiguity", 0.375, 1, 1e-9)]
    [InlineData("comes-out-even", 0, 1, 1e-9)]
    public void Shipped_anchors_lie_near_the_sampled_ones(
        string criterion,
        double zero,
        double one,
        double tolerance
    )
    {
        var anchor = Anchors.BuiltIn.Of(criterion)!;
        Assert.Equal(zero, anchor.Zero, tolerance);
        Assert.Equal(one, anchor.One, tolerance);
        Assert.True(anchor.IsExact);
    }

    [Fact]
    public void Every_criterion_has_an_anchor_that_says_how_it_was_got()
    {
        Assert.Equal(RawMeasures.Criteria.Order(), Anchors.BuiltIn.All.Select(anchor => anchor.Criterion));
        Assert.All(Anchors.BuiltIn.All, anchor => Assert.True(anchor.Zero < anchor.One));
        Assert.All(Anchors.BuiltIn.All, anchor => Assert.Contains("percentile", anchor.How));
        Assert.All(Anchors.BuiltIn.All, anchor => Assert.Contains("923,804", anchor.Cells));
        Assert.Null(Anchors.BuiltIn.Of("charm"));
    }

    [Fact]
    public void A_sample_comes_near_the_anchors_of_all_cells()
    {
        var sampled = AnchorSample.Of(Music, Player.At(2), Technique.Alternate);

        Assert.Equal(["general-use", "use-in-music"], sampled.Select(anchor => anchor.Criterion));
        Assert.Equal(Anchors.BuiltIn.Of("general-use")!.Zero, sampled[0].Zero, 0.01);
        Assert.Equal(Anchors.BuiltIn.Of("general-use")!.One, sampled[0].One, 0.03);
        Assert.Equal(Anchors.BuiltIn.Of("use-in-music")!.Zero, sampled[1].Zero, 0.0005);
        Assert.Equal(Anchors.BuiltIn.Of("use-in-music")!.One, sampled[1].One, 0.002);
        Assert.DoesNotContain(sampled, anchor => anchor.IsExact);
    }

    [Fact]
    public void Replaced_anchors_leave_the_rest_alone()
    {
        var other = new Anchor("general-use", 0.25, 0.75, "by hand", "none", IsExact: true);
        var anchors = Anchors.BuiltIn.With(other);

        Assert.Equal(0.5, anchors.Of("general-use")!.ValueOf(0.5), 1e-12);
        Assert.Equal(1, anchors.Of("general-use")!.ValueOf(0.9), 1e-12);
        Assert.Equal(0.1, anchors.Of("general-use")!.ErrorOf(0.05), 1e-12);
        Assert.Equal(Anchors.BuiltIn.Of("even-load"), anchors.Of("even-load"));
    }

    [Fact]
    public void Percentiles_give_every_length_the_same_weight()
    {
        // Half the weight on 1 to 5 alike, half on 100: nine tenths are only reached at 100.
        var (low, high) = AnchorCells.Percentiles([
            [1, 2, 3, 4, 5],
            [100],
        ]);
        Assert.Equal(1, low);
        Assert.Equal(100, high);
        Assert.Equal(
            (1, 9),
            AnchorCells.Percentiles([
                [1, 2, 3, 4, 5, 6, 7, 8, 9, 10],
            ])
        );
    }
}
