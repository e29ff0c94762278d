using Passagework.Engraving.Drawing;
using Passagework.Engraving.Scores;

namespace Passagework.Tests.Engraving.Scores;

/// <summary>Bars cut out of a longer piece, and last systems that may be short.</summary>
public sealed class ScorePartTests
{
    [Fact]
    public void A_later_part_has_no_metre()
    {
        Assert.Contains(Kinds(new ScoreOptions()), kind => kind == "time");
        Assert.DoesNotContain(Kinds(new ScoreOptions { Begins = false }), kind => kind == "time");
    }

    [Fact]
    public void A_part_before_the_end_has_no_thick_bar_line()
    {
        // The thick line of an end is half a space wide (SMuFL, engravingDefaults).
        Assert.Equal(0.875, BarLines(new ScoreOptions()).Max(line => line.WidthMm), 6);
        Assert.Equal(0.28, BarLines(new ScoreOptions { Ends = false }).Max(line => line.WidthMm), 6);
    }

    // Three units of natural width 60 in room 100, pressed to 48 at least: even sharing breaks after the first, a short
    // last line lets two stand in the first; costs by hand: ((100 − 120)/120)² = 0.0278 against that and more.
    [Fact]
    public void A_short_last_line_costs_nothing_when_asked_for()
    {
        var units = Enumerable.Repeat(new BreakUnit(60, 48, 0, 0), 3).ToArray();

        Assert.Equal([1, 3], SystemBreaks.Choose(units, 100, 100).Ends);
        var (ends, cost) = SystemBreaks.Choose(units, 100, 100, shortLast: true);
        Assert.Equal([2, 3], ends);
        Assert.Equal(0.0278, cost, 4);
    }

    // Room 100 holds the second unit only without the 30 that it keeps free for the third.
    [Fact]
    public void What_the_next_column_needs_is_not_needed_at_the_end_of_a_line()
    {
        BreakUnit[] units = [new(50, 50, 0, 0), new(80, 80, 0, 0) { Spared = (30, 30) }, new(60, 60, 0, 0)];

        Assert.Equal([2, 3], SystemBreaks.Choose(units, 100, 100).Ends);
    }

    [Fact]
    public void A_unit_too_wide_for_any_line_stands_alone()
    {
        BreakUnit[] units = [new(50, 50, 0, 0), new(130, 120, 0, 0), new(50, 50, 0, 0)];

        Assert.Equal([1, 2, 3], SystemBreaks.Choose(units, 100, 100).Ends);
    }

    // Bars of groups of five fill two systems of 180 mm: two bars and a short one.
    [Fact]
    public void Systems_before_a_short_last_one_are_full()
    {
        var systems = Systems(new ScoreOptions { ShortLast = true });

        Assert.Equal([(1, 2), (3, 3)], systems.Select(system => (system.FirstBar, system.LastBar)));
        Assert.Equal(180, systems[0].MusicEndMm, 6);
        Assert.True(systems[1].MusicEndMm < 0.7 * 180);
    }

    private static IEnumerable<LineMark> BarLines(ScoreOptions options) =>
        Systems(options)
            .SelectMany(system => system.Marks)
            .OfType<LineMark>()
            .Where(mark => mark.Kind == "bar-line");

    private static IEnumerable<string> Kinds(ScoreOptions options) =>
        Systems(options).SelectMany(system => system.Marks).Select(mark => mark.Kind);

    private static IReadOnlyList<ScoreSystem> Systems(ScoreOptions options) =>
        ScoreEngraver.Engrave(Played.Of("groups-of-five-up"), options).OrThrow().Systems;
}
