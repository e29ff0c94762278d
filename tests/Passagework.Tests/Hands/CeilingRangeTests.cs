using Passagework.Hands;

namespace Passagework.Tests.Hands;

/// <summary>
/// The range over 200 joint draws. Values computed for the project by an independent program with the same
/// generator (SplitMix64 from seed 1) and spreads.
/// </summary>
public class CeilingRangeTests
{
    [Theory]
    [InlineData("0 1 2", "5.36 4.29 5.60 0.61/0.22/0.18")]
    [InlineData("0 1 2 3 4", "4.97 4.06 5.34 0.63/0.28/0.09")]
    public void Range_at_level_2_is_the_tabled_one(string cell, string expected)
    {
        var player = Player.At(2);
        var offsets = cell.Split(' ').Select(offset => offset[0] - '0').ToArray();
        var line = Lines.Of(Lines.Groups(offsets));

        var ceiling = CeilingFinder.Of(Realizer.Plan(line, player).OrThrow().Demands, player.Parameters);

        var range = ceiling.Range ?? throw new InvalidOperationException("no range");
        Assert.Equal(
            expected,
            FormattableString.Invariant(
                $"{ceiling.Least:0.00} {range.Low:0.00} {range.High:0.00} {Share(range.FrettingShare)}/{Share(range.PickingShare)}/{Share(range.TogetherShare)}"
            )
        );
    }

    [Fact]
    public void Shares_add_up_to_one()
    {
        var player = Player.At(3.4);
        var line = Lines.Of(Lines.BoxUpAndDown);

        var range = CeilingFinder.Of(Realizer.Plan(line, player).OrThrow().Demands, player.Parameters).Range;

        Assert.NotNull(range);
        Assert.Equal(1, range.FrettingShare + range.PickingShare + range.TogetherShare, 1e-12);
        Assert.True(range.Low < range.High);
    }

    // Halves away from zero: 0.605 is 0.61 in the table.
    private static string Share(double share) =>
        Math.Round((decimal)share, 2, MidpointRounding.AwayFromZero)
            .ToString("0.00", System.Globalization.CultureInfo.InvariantCulture);
}
