using Passagework.Foundation;
using Passagework.Sound.Performance;
using Passagework.Tests.Rhythm;

namespace Passagework.Tests.Sound.Performance;

public sealed class TempoPlanTests
{
    [Fact]
    public void A_ladder_goes_from_start_to_goal_in_equal_steps() =>
        Assert.Equal([60.0, 80, 100, 120], Begins(TempoPlan.Ladder(Beats.Tempo(60), Beats.Tempo(120), 4)));

    [Fact]
    public void A_ladder_of_one_is_played_at_the_goal() =>
        Assert.Equal([120.0], Begins(TempoPlan.Ladder(Beats.Tempo(60), Beats.Tempo(120), 1)));

    [Fact]
    public void Slow_and_goal_take_turns() =>
        Assert.Equal([60.0, 120, 60], Begins(TempoPlan.Alternating(Beats.Tempo(60), Beats.Tempo(120), 3)));

    [Fact]
    public void A_gradual_change_goes_on_from_time_to_time()
    {
        var passes = TempoPlan.Gradual(Beats.Tempo(60), Beats.Tempo(120), 2).OrThrow().Passes;

        Assert.Equal(
            [(60.0, 90.0), (90, 120)],
            passes.Select(pass => (pass.From.BeatsPerMinute, pass.To.BeatsPerMinute))
        );
    }

    [Theory]
    [InlineData(0)]
    [InlineData(501)]
    public void Too_few_or_many_times_are_refused(int times) =>
        Assert.Equal(
            $"{times} times through; 1 to 500",
            Assert
                .IsType<Outcome<TempoPlan>.Refused>(TempoPlan.Steady(Beats.Tempo(60), times))
                .Fault.ToString()
        );

    private static IEnumerable<double> Begins(Outcome<TempoPlan> plan) =>
        plan.OrThrow().Passes.Select(pass => pass.From.BeatsPerMinute);
}
