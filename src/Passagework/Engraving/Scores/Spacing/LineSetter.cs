using System.Collections.Immutable;

namespace Passagework.Engraving.Scores;

/// <summary>Sets one line: stretches its springs to the width and places its columns.</summary>
internal sealed class LineSetter(Spacer spacer, BarEdges edges, int first, int end)
{
    // A last line that all but fills the width fills it.
    private const double NearlyFull = 0.9;

    private readonly Spring[] _springs = new Spring[end - first];

    /// <summary>What columns stand on whole multiples of, in spaces; 0 for wherever they fall.</summary>
    public double Grid { get; init; }

    /// <summary>Sets it.</summary>
    /// <param name="index">Which line, from 0.</param>
    /// <param name="prefix">What stands at its start.</param>
    /// <param name="width">Width asked for.</param>
    /// <param name="stretch">How far the line before was stretched; a short last line takes it over. Set to this line's.</param>
    public SystemPlan Set(int index, LinePrefix prefix, double width, ref double stretch)
    {
        var leads = 0.0;
        for (var i = first; i < end; i++)
        {
            _springs[i - first] = i + 1 < end ? spacer.SpringAfter(i) : spacer.SpringToEnd(i);
            leads += i > first ? spacer.LeadTo(i) : 0;
        }

        var start = prefix.Width + spacer.StartLead(spacer.Columns[first], spacer.StartsBar(first));
        var room = width - start - leads - BarEdges.Width(Closing());
        var full = Springs.Stretch(_springs, room);
        var natural = leads + _springs.Sum(spring => spring.At(1));
        var isShort = end == spacer.Columns.Length && natural <= SystemBreaks.JustifiedLast * (room + leads);
        stretch = isShort && stretch < NearlyFull * full ? stretch : full;
        return Place(index, prefix, start, stretch);
    }

    private BarEdge Closing()
    {
        var last = spacer.Columns[end - 1];
        return last.EndsBar ? edges.Closing(last.Bar) : BarEdge.None;
    }

    private SystemPlan Place(int index, LinePrefix prefix, double start, double stretch)
    {
        var bars = PlaceColumns(prefix.Width, start, stretch);
        var last = bars[^1];
        return new SystemPlan
        {
            Index = index,
            Columns = [.. spacer.Columns[first..end]],
            StartsBar = spacer.StartsBar(first),
            Prefix = prefix,
            EndX = last.EndX + BarEdges.Width(last.Closing),
            Bars = bars,
            Next = end < spacer.Columns.Length ? spacer.Columns[end] : null,
        };
    }

    private ImmutableArray<PlannedBar> PlaceColumns(double barStart, double x, double stretch)
    {
        var bars = ImmutableArray.CreateBuilder<PlannedBar>();
        var barFirst = first;
        for (var i = first; i < end; i++)
        {
            var column = spacer.Columns[i];
            column.X = Snapped(x);
            x += _springs[i - first].At(stretch);
            if (!column.EndsBar && i + 1 < end)
            {
                continue;
            }

            var opening = spacer.StartsBar(barFirst) ? edges.Opening(column.Bar) : BarEdge.None;
            var closing = i + 1 < end ? edges.ClosingInLine(column.Bar) : Closing();
            bars.Add(new PlannedBar(column.Bar, barStart, x, opening, closing));
            Centre(column, barStart, x);
            barStart = x + BarEdges.Width(closing);
            barFirst = i + 1;
            x += i + 1 < end ? spacer.LeadTo(i + 1) : 0;
        }

        return bars.ToImmutable();
    }

    private double Snapped(double x) => Grid > 0 ? Math.Round(x / Grid) * Grid : x;

    private void Centre(Column column, double from, double to)
    {
        if (column.Written.WholeBar)
        {
            column.X = Snapped((from + to) / 2);
        }
    }
}
