using System.Collections.Immutable;
using Passagework.Choosing.Measures;

namespace Passagework.Tests.Choosing.Measures;

public sealed class FigureTests
{
    private static readonly ImmutableArray<double> Alternating =
    [
        .. Enumerable.Range(0, Figure.DrawCount).Select(d => d % 2 == 0 ? 1.0 : 3.0),
    ];

    [Fact]
    public void The_error_is_the_standard_deviation_of_the_draws()
    {
        Assert.Equal(1, new Figure(2, Alternating).Error, 1e-12);
        Assert.Equal(0, Figure.Exact(2).Error);
        Assert.Equal(0, Figure.Missing.Error);
    }

    [Fact]
    public void A_mean_keeps_what_the_draws_share()
    {
        var mean = Figure.Mean([
            new Figure(2, Alternating),
            new Figure(4, [.. Alternating.Select(x => 5 - x)]),
        ]);

        Assert.Equal(3, mean.Raw);
        Assert.Equal(2.5, mean.At(0));
        Assert.Equal(0, mean.Error, 1e-12);
    }

    [Fact]
    public void An_exact_figure_beside_drawn_ones_is_the_same_in_every_draw()
    {
        var mean = Figure.Mean([Figure.Exact(2), new Figure(2, Alternating)]);

        Assert.Equal(1.5, mean.At(0));
        Assert.Equal(2.5, mean.At(1));
        Assert.Equal(0.5, mean.Error, 1e-12);
    }

    [Fact]
    public void One_missing_figure_leaves_the_mean_missing()
    {
        var mean = Figure.Mean([Figure.Exact(2), Figure.Missing]);

        Assert.Null(mean.Raw);
        Assert.Throws<InvalidOperationException>(() => mean.At(0));
    }
}
