using System.Globalization;
using CsCheck;
using Passagework.Engraving.Scores;
using Passagework.Foundation;

namespace Passagework.Tests.Engraving.Scores;

public sealed class SpacingTests
{
    // The square-root law with 3.5 spaces for a quarter, worked by hand to two places.
    [Theory]
    [InlineData("1", 7.00)]
    [InlineData("1/2", 4.95)]
    [InlineData("3/8", 4.29)]
    [InlineData("1/4", 3.50)]
    [InlineData("3/16", 3.03)]
    [InlineData("1/8", 2.47)]
    [InlineData("1/12", 2.02)]
    [InlineData("1/16", 1.75)]
    [InlineData("1/20", 1.57)]
    [InlineData("1/24", 1.43)]
    public void Room_grows_with_the_root_of_the_length(string length, double expected)
    {
        Assert.True(Fraction.TryParse(length, out var parsed));

        Assert.Equal(expected, SpaceLaw.Width(parsed), 0.005);
    }

    // Natural 1, 2, 3, rods 2, 2, 2: worked by hand.
    [Theory]
    [InlineData(12, 2)]
    [InlineData(7, 1)]
    [InlineData(6, 0)]
    [InlineData(5, 0)]
    public void Stretch_fills_the_room_and_respects_rods(double room, double expected)
    {
        Spring[] springs = [new(1, 2), new(2, 2), new(3, 2)];

        Assert.Equal(expected, Springs.Stretch(springs, room), 1e-12);
    }

    [Fact]
    public void Stretched_springs_fill_any_room_above_the_rods() =>
        Gen.Select(Gen.Select(Gen.Double[0, 9], Gen.Double[0, 9]).Array[1, 30], Gen.Double[0.01, 50])
            .Where(pair => pair.Item1.Any(spring => spring.Item1 > 0.01))
            .Sample(pair =>
            {
                var springs = pair.Item1.Select(spring => new Spring(spring.Item1, spring.Item2)).ToArray();
                var room = springs.Sum(spring => spring.Rod) + pair.Item2;

                var stretch = Springs.Stretch(springs, room);

                Assert.Equal(room, springs.Sum(spring => spring.At(stretch)), 1e-6);
            });

    // Two vectors of bar widths whose optimum was found by trying all breaks; line 100, clef and key 10, later 6.
    [Theory]
    [InlineData("24 24 40 24 24 40 24", "3 7", 0.0263)]
    [InlineData("34 20 34 34 20 34 34", "2 4 7", 0.5953)]
    public void Lines_are_broken_for_the_whole_piece(string bars, string ends, double cost)
    {
        var units = Units(bars);

        var found = SystemBreaks.Choose(units, 90, 94);

        Assert.Equal(ends, string.Join(' ', found.Ends));
        Assert.Equal(cost, found.Cost, 0.00005);
    }

    [Fact]
    public void A_dear_break_is_avoided()
    {
        BreakUnit[] units = [new(45, 45, 0, 0), new(45, 45, 0, 5), new(45, 45, 0, 0), new(45, 45, 0, 0)];

        Assert.Equal([1, 3, 4], SystemBreaks.Choose(units, 100, 100).Ends);
    }

    [Theory]
    [InlineData(0.5, "2 4 6")]
    [InlineData(0.25, "1 2 3 4 5 6")]
    [InlineData(0.1, "1 2 3 4 5 6")]
    [InlineData(0.8, "3 6")]
    public void A_line_of_several_units_lasts_no_longer_than_asked(double longest, string ends)
    {
        var units = Units("20 20 20 20 20 20").Select(unit => unit with { Time = 0.25 }).ToArray();

        var found = SystemBreaks.Choose(units, 120, 120, longest: longest);

        Assert.Equal(ends, string.Join(' ', found.Ends));
    }

    [Fact]
    public void What_stands_between_units_is_saved_at_the_start_of_a_line()
    {
        BreakUnit[] units = [new(40, 40, 20, 0), new(40, 40, 20, 0), new(40, 40, 20, 0), new(40, 40, 20, 0)];

        Assert.Equal(0, SystemBreaks.Choose(units, 100, 100).Cost, 1e-12);
    }

    [Fact]
    public void Breaks_equal_those_of_trying_everything() =>
        Gen.Select(
                Gen.Select(Gen.Double[5, 60], Gen.Double[0.5, 1], Gen.Double[0, 3], Gen.Double[0, 0.2]).Array[
                    1,
                    9
                ],
                Gen.Double[60, 100],
                Gen.Double[60, 100]
            )
            .Sample(
                (bars, first, later) =>
                {
                    var units = bars.Select(bar => new BreakUnit(
                            bar.Item1,
                            bar.Item1 * bar.Item2,
                            bar.Item3,
                            bar.Item4
                        ))
                        .ToArray();

                    Assert.Equal(
                        Cheapest(units, first, later),
                        SystemBreaks.Choose(units, first, later).Cost,
                        1e-9
                    );
                }
            );

    // The slow twin: every set of breaks.
    private static double Cheapest(BreakUnit[] units, double first, double later)
    {
        var best = double.PositiveInfinity;
        for (var set = 0; set < 1 << (units.Length - 1); set++)
        {
            var (cost, start) = (0.0, 0);
            for (var end = 1; end <= units.Length; end++)
            {
                if (end < units.Length && (set & (1 << (end - 1))) == 0)
                {
                    continue;
                }

                var line = units[start..end];
                var leads = line.Skip(1).Sum(unit => unit.Lead);
                var natural = line.Sum(unit => unit.Natural) + leads;
                var room = start == 0 ? first : later;
                var fits = room >= 0.8 * natural && room >= line.Sum(unit => unit.Least) + leads;
                cost += fits ? Math.Pow((room - natural) / natural, 2) : double.PositiveInfinity;
                cost += end < units.Length ? units[end - 1].BreakCost : 0;
                start = end;
            }

            best = Math.Min(best, cost);
        }

        return best;
    }

    private static BreakUnit[] Units(string bars) =>
        [
            .. bars.Split(' ')
                .Select(text => double.Parse(text, CultureInfo.InvariantCulture))
                .Select(width => new BreakUnit(width, width / 2, 0, 0)),
        ];
}
