using Passagework.Choosing;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Hands;

namespace Passagework.Tests.Choosing.Measures;

/// <remarks>
/// Values of the hand model worked out by an independent program from the definitions in docs/hands-model.md and
/// docs/choosing.md: up-and-down forms in box 1 of A minor pentatonic, mean of both first strokes.
/// </remarks>
public sealed class MeasuredFormTests
{
    [Theory]
    [InlineData("groups-of-three", Technique.Alternate, 2, 2.800, 0.8736, 0.8736)]
    [InlineData("groups-of-three", Technique.Alternate, 3, 2.800, 0.8989, 0.8989)]
    [InlineData("groups-of-four", Technique.Alternate, 2, 2.749, 0.8571, 0.8483)]
    [InlineData("groups-of-four", Technique.Alternate, 3, 2.749, 0.8745, 0.8655)]
    [InlineData("groups-of-five", Technique.Alternate, 2, 2.714, 0.8876, 0.8673)]
    [InlineData("groups-of-five", Technique.Alternate, 3, 2.714, 0.9101, 0.8893)]
    [InlineData("groups-of-six", Technique.Alternate, 2, 3.470, 0.8528, 0.8528)]
    [InlineData("groups-of-six", Technique.Alternate, 3, 3.470, 0.8750, 0.8750)]
    [InlineData("every-other-note", Technique.Alternate, 2, 2.800, 0.8292, 0.8292)]
    [InlineData("every-other-note", Technique.Alternate, 3, 2.800, 0.8364, 0.8364)]
    [InlineData("one-sided-rolls-low", Technique.Sweep, 2, 1.000, 0.6233, 0.2244)]
    [InlineData("one-sided-rolls-low", Technique.Sweep, 3, 1.000, 0.6221, 0.2240)]
    [InlineData("one-sided-rolls-low", Technique.Alternate, 2, 1.000, 0.8085, 0.2911)]
    [InlineData("one-sided-rolls-low", Technique.Alternate, 3, 1.000, 0.7881, 0.2837)]
    [InlineData("one-sided-rolls-high", Technique.Sweep, 2, 1.890, 0.6514, 0.4431)]
    [InlineData("one-sided-rolls-high", Technique.Sweep, 3, 1.890, 0.6546, 0.4454)]
    [InlineData("one-sided-rolls-high", Technique.Alternate, 2, 1.890, 0.8456, 0.5752)]
    [InlineData("one-sided-rolls-high", Technique.Alternate, 3, 1.890, 0.8307, 0.5651)]
    public void Even_load_of_a_family(
        string family,
        Technique technique,
        int level,
        double fingers,
        double balance,
        double evenLoad
    )
    {
        var forms = Forms(family, technique, level);

        Assert.All(forms, form => Assert.Equal(fingers, form.Measured.Fretting.EffectiveFingers, 0.0005));
        Assert.Equal(balance, forms.Average(form => form.Measured.Balance) ?? 0, 0.00005);
        Assert.Equal(evenLoad, Figure.Mean([.. forms.Select(form => form.EvenLoad)]).Raw ?? 0, 0.00005);
    }

    [Theory]
    [InlineData("groups-of-three", 2.54, 11.31, 0.0990)]
    [InlineData("groups-of-four", 2.26, 9.95, 0.1651)]
    [InlineData("groups-of-five", 2.44, 10.81, 0.1234)]
    [InlineData("groups-of-six", 2.22, 9.35, 0.1979)]
    [InlineData("every-other-note", 2.02, 9.39, 0.1856)]
    [InlineData("one-sided-rolls-low", 2.44, 9.52, 0.1981)]
    [InlineData("one-sided-rolls-high", 2.46, 9.59, 0.1945)]
    public void Staying_power_of_a_family(string family, double first, double last, double expected)
    {
        var forms = Forms(family, Technique.Alternate, 2);

        Assert.Equal(first, forms.Average(form => form.First.Least) ?? 0, 0.005);
        Assert.Equal(last, forms.Average(form => form.Last.Least) ?? 0, 0.005);
        Assert.Equal(expected, Figure.Mean([.. forms.Select(form => form.StayingPower)]).Raw ?? 0, 0.00005);
    }

    [Theory]
    [InlineData("groups-of-five", 0.048, 0.046)]
    [InlineData("groups-of-three", 0.049, 0.043)]
    [InlineData("one-sided-rolls-low", 0.054, 0.095)]
    public void Errors_over_the_joint_draws(string family, double evenLoad, double stayingPower)
    {
        var forms = Forms(family, Technique.Alternate, 2);

        Assert.Equal(evenLoad, Figure.Mean([.. forms.Select(form => form.EvenLoad)]).Error, 0.0005);
        Assert.Equal(stayingPower, Figure.Mean([.. forms.Select(form => form.StayingPower)]).Error, 0.0005);
    }

    [Fact]
    public void Staying_power_does_not_hang_on_the_player()
    {
        var beginner = Forms("groups-of-five", Technique.Alternate, 0)[0];
        var expert = Forms("groups-of-five", Technique.Alternate, 4)[0];

        Assert.Equal(beginner.StayingPower, expert.StayingPower);
        Assert.NotEqual(beginner.EvenLoad, expert.EvenLoad);
    }

    [Fact]
    public void The_draws_lie_about_the_plain_figure()
    {
        var form = Forms("groups-of-five", Technique.Alternate, 2)[0];

        Assert.Equal(Figure.DrawCount, form.EvenLoad.Draws.Length);
        Assert.InRange(form.EvenLoad.Raw ?? 0, form.EvenLoad.Draws.Min(), form.EvenLoad.Draws.Max());
    }

    private static List<MeasuredForm> Forms(string family, Technique technique, int level)
    {
        var levels = new PlayerLevels(Player.At(level));
        return CandidateSource
            .OfFamily(family, technique)
            .OrThrow()
            .Forms.Select(form => MeasuredForm.Of(form, levels).OrThrow())
            .ToList();
    }
}
