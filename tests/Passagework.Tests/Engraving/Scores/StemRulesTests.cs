using Passagework.Engraving.Scores;

namespace Passagework.Tests.Engraving.Scores;

/// <summary>Positions count half spaces above the middle line. The rules are common practice as taught; figures are ours.</summary>
public sealed class StemRulesTests
{
    [Theory]
    [InlineData(true, -1)]
    [InlineData(false, 0)]
    [InlineData(false, 1)]
    [InlineData(true, -5, 3)]
    [InlineData(false, -3, 5)]
    [InlineData(false, -3, 3)]
    public void The_note_farthest_from_the_middle_decides(bool up, params int[] positions) =>
        Assert.Equal(up, StemRules.PointsUp(positions));

    [Theory]
    [InlineData(true, -4, -1, 2)]
    [InlineData(false, -2, -1, 4)]
    [InlineData(true, -3, 3, -1)]
    [InlineData(false, -3, 3, 1)]
    [InlineData(false, -3, 3)]
    public void The_majority_decides_for_a_group_at_equal_distance(bool up, params int[] positions) =>
        Assert.Equal(up, StemRules.GroupPointsUp(positions));

    [Theory]
    [InlineData(3.5, -2, true, 1)]
    [InlineData(3.5, 0, false, 2)]
    [InlineData(4.25, -2, true, 3)]
    [InlineData(5.0, -2, true, 4)]
    [InlineData(3.5, -7, true, 1)]
    [InlineData(4.0, -8, true, 0)]
    [InlineData(5.5, 11, false, 1)]
    public void A_stem_is_of_usual_length_or_reaches_the_middle_line(
        double expected,
        int position,
        bool up,
        int beams
    ) => Assert.Equal(expected, StemRules.Length(position, up, beams), 1e-12);

    [Theory]
    [InlineData(2.5, 1)]
    [InlineData(2.75, 2)]
    [InlineData(3.5, 3)]
    public void Inner_stems_are_never_shorter(double expected, int beams) =>
        Assert.Equal(expected, StemRules.Least(beams), 1e-12);
}
