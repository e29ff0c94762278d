using Passagework.Exercises;
using Passagework.Hands;

namespace Passagework.Tests.Hands;

public sealed class EvenLoadDrawsTests
{
    [Theory]
    [InlineData("groups-of-five-up-and-down", 2)]
    [InlineData("slurred-threes-up", 0)]
    [InlineData("one-string-run-up", 4)]
    [InlineData("thumb-and-fingers-rolling", 1)]
    public void Each_draw_is_the_balance_of_the_times_under_that_draw(string id, int level)
    {
        var player = Player.At(level);
        var line = LineBuilder.Build(Library.Find(id).OrThrow().Recipe).OrThrow();
        var planned = Realizer.Plan(line, player).OrThrow();
        var draws = player.Parameters.Draws;

        var fast = EvenLoadDraws.Of(planned, draws, 0.5);

        Assert.Equal(ParameterDraws.Count, fast.Length);
        for (var d = 0; d < fast.Length; d += 19)
        {
            var basis = BasisOf(draws, d);
            var balance = Balance.Of(
                planned.Demands.Fretting.Milliseconds(basis),
                planned.Demands.Picking.Milliseconds(basis)
            );
            Assert.Equal(0.5 * balance ?? 0, fast[d], 1e-12);
        }
    }

    // One entry of the basis at a time, as the sum that a demand of that entry alone has.
    private static double[] BasisOf(ParameterDraws draws, int draw)
    {
        var basis = new double[Basis.Count];
        for (var entry = 0; entry < basis.Length; entry++)
        {
            var column = new double[ParameterDraws.Count];
            draws.AddTo(column, entry, 1);
            basis[entry] = column[draw];
        }

        return basis;
    }
}
