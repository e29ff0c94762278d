using System.Collections.Immutable;
using Passagework.Sound;
using Passagework.Tests.Sound.Measuring;

namespace Passagework.Tests.Sound;

public sealed class HumanisingTests
{
    private static readonly ImmutableArray<StringEvent> Line =
    [
        .. Enumerable
            .Range(0, 400)
            .Select(i => Plucks.Pluck((i / 2 % 6) + 1, i % 4, 1 + (i * 0.1), 1.1 + (i * 0.1))),
    ];

    [Fact]
    public void The_same_seed_gives_the_same_hand()
    {
        Assert.Equal(new Humanising().Apply(Line, 3), new Humanising().Apply(Line, 3));
        Assert.NotEqual(new Humanising().Apply(Line, 3), new Humanising().Apply(Line, 4));
    }

    [Fact]
    public void The_spread_of_times_is_what_was_asked()
    {
        var loose = new Humanising { Seconds = 0.008 }.Apply(Line, 1);
        double[] shifts = [.. loose.Zip(Line, (a, b) => a.Seconds - b.Seconds)];

        Assert.InRange(Math.Sqrt(shifts.Average(s => s * s)), 0.007, 0.009);
        Assert.InRange(shifts.Average(), -0.001, 0.001);
        Assert.InRange(shifts.Max(Math.Abs), 0.012, 0.0193);
    }

    [Fact]
    public void Order_and_joins_on_a_string_stay()
    {
        var loose = new Humanising { Seconds = 0.2 }.Apply(Line, 1);

        foreach (var line in loose.GroupBy(e => e.String))
        {
            var times = line.Select(e => e.Seconds).ToArray();
            Assert.Equal(times.Order(), times);
        }

        // Even events are followed on their string by the odd ones where they end.
        Assert.All(
            Enumerable.Range(0, 200),
            k => Assert.Equal(loose[(2 * k) + 1].Seconds, loose[2 * k].EndSeconds, 1e-9)
        );
    }

    [Fact]
    public void Nothing_asked_moves_nothing()
    {
        var still = new Humanising
        {
            Seconds = 0,
            Strength = 0,
            Position = 0,
        }.Apply(Line, 9);

        Assert.Equal(Line.Select(e => (e.Seconds, e.Strength)), still.Select(e => (e.Seconds, e.Strength)));
    }

    [Fact]
    public void A_free_string_stays_free()
    {
        ImmutableArray<StringEvent> free = [Plucks.Pluck(1, 0) with { Strength = 0 }];

        Assert.Equal(0, new Humanising().Apply(free, 1)[0].Strength);
    }
}
