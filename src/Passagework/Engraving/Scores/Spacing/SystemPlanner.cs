using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Engraving.Scores;

/// <summary>Sets columns into lines: cuts what is too wide, breaks, justifies.</summary>
internal sealed class SystemPlanner
{
    // How loosely a lone short line is set, where no line before it tells.
    private const double LooseStretch = 1.4;

    // What ending a line inside a group of the exercise, and inside a bar, costs more.
    private const double InsideGroup = 0.05;
    private const double InsideBar = 0.3;
    private const double AtRepeat = -0.02;

    private readonly ColumnInk _ink;
    private readonly BarEdges _edges;
    private readonly LinePrefix _firstPrefix;
    private readonly LinePrefix _laterPrefix;
    private readonly double _width;
    private readonly Meter _meter;
    private readonly bool _shortLast;
    private readonly double _longest;
    private readonly double _grid;

    public SystemPlanner(
        ColumnInk ink,
        BarEdges edges,
        PrefixWriter prefixes,
        ScoreOptions options,
        Meter meter
    )
    {
        _ink = ink;
        _edges = edges;
        _firstPrefix = prefixes.Write(first: true);
        _laterPrefix = prefixes.Write(first: false);
        _width = options.WidthMm / prefixes.SpaceMm;
        _shortLast = options.ShortLast;
        _longest = options.LongestSystem?.ToDouble() ?? double.PositiveInfinity;
        _grid = options.GridMm / prefixes.SpaceMm;
        _meter = meter;
    }

    /// <summary>The lines of a piece; a fault where not even one note fits.</summary>
    public Outcome<ImmutableArray<SystemPlan>> Plan(ImmutableArray<ImmutableArray<Column>> bars)
    {
        var start = WidestStart(bars);
        var cutter = new UnitCutter(
            _meter,
            (Room(_firstPrefix, start), _longest),
            piece => new Spacer([piece], _ink, _edges).ForBreaking(BreakCost)[0]
        );
        return cutter
            .Cut(bars)
            .Then<ImmutableArray<SystemPlan>>(units => Set(new Spacer(units, _ink, _edges), start));
    }

    // Enough for any column to begin a line.
    private double WidestStart(ImmutableArray<ImmutableArray<Column>> bars)
    {
        var (spacer, widest) = (new Spacer([], _ink, _edges), 0.0);
        foreach (var bar in bars)
        {
            foreach (var column in bar)
            {
                widest = Math.Max(widest, spacer.StartLead(column, startsBar: true));
            }
        }

        return widest;
    }

    private double Room(LinePrefix prefix, double start) =>
        _width - prefix.Width - start - BarEdges.Width(BarEdge.Final);

    private ImmutableArray<SystemPlan> Set(Spacer spacer, double start)
    {
        var ends = SystemBreaks
            .Choose(
                spacer.ForBreaking(BreakCost).AsSpan(),
                Room(_firstPrefix, start),
                Room(_laterPrefix, start),
                _shortLast,
                _longest
            )
            .Ends;
        var plans = ImmutableArray.CreateBuilder<SystemPlan>(ends.Length);
        var stretch = LooseStretch;
        var (unit, column) = (0, 0);
        foreach (var end in ends)
        {
            var count = spacer.Units[unit..end].Sum(columns => columns.Length);
            var line = new LineSetter(spacer, _edges, column, column + count) { Grid = _grid };
            var prefix = plans.Count == 0 ? _firstPrefix : _laterPrefix;
            plans.Add(line.Set(plans.Count, prefix, _width, ref stretch));
            (unit, column) = (end, column + count);
        }

        return plans.MoveToImmutable();
    }

    private double BreakCost(Column last, Column next)
    {
        if (!last.EndsBar)
        {
            return InsideBar;
        }

        if (_edges.Closing(last.Bar) == BarEdge.RepeatEnd)
        {
            return AtRepeat;
        }

        return last.Group is { } group && next.Group == group ? InsideGroup : 0;
    }
}
