using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Hands.Explaining;
using static Passagework.Tests.Hands.Explaining.MoveExplanationTests;

namespace Passagework.Tests.Hands.Explaining;

public class LevelTableTests
{
    [Fact]
    public void Rows_are_the_ceilings_that_are_measured_at_each_level()
    {
        var table = LevelTable.Of(Library.Find("groups-of-five-up").OrThrow().Recipe, Player.At(2)).OrThrow();

        Assert.Equal(Player.LevelNames, table.Rows.Select(row => row.Name));
        for (var level = 0; level < 5; level++)
        {
            var measured = Measured("groups-of-five-up", level);
            Assert.Equal(measured.Bpm, table.Rows[level].Top?.Bpm);
            Assert.Equal(measured.Ceiling.LimitedBy, table.Rows[level].Ceiling.LimitedBy);
            Assert.True(table.Rows[level].Top?.Low <= table.Rows[level].Top?.Bpm);
            Assert.True(table.Rows[level].Top?.High >= table.Rows[level].Top?.Bpm);
        }
    }

    [Fact]
    public void A_change_of_the_hand_that_limits_is_said()
    {
        var table = LevelTable.Of(Library.Find("groups-of-five-up").OrThrow().Recipe, Player.At(2)).OrThrow();

        Assert.Equal(
            "Up to advanced the fretting hand sets the pace; from expert on it is the picking hand.",
            table.Change
        );
    }

    [Fact]
    public void A_player_who_can_not_play_it_is_a_fault()
    {
        var none = Player.At(2) with { Avoid = [1, 2, 3, 4] };

        var table = LevelTable.Of(Library.Find("groups-of-five-up").OrThrow().Recipe, [("nobody", none)]);

        Assert.Contains(
            "finger",
            Assert.IsType<Outcome<LevelTable>.Refused>(table).Fault.What,
            StringComparison.Ordinal
        );
    }
}
