using System.Collections.Immutable;

namespace Passagework.Engraving.Scores;

/// <summary>
/// How far apart the columns of a piece stand: a spring from each to the next or to the bar line, with the room that a bar
/// line and a new bar need.
/// </summary>
internal sealed class Spacer
{
    // Fixed room in staff spaces (ours): from a bar line to a head, or to what stands left of it;
    // before a bar line; from clef, key or metre to a head.
    private const double BarToHead = 1.2;
    private const double BarToSide = 0.8;
    private const double ToBar = 1.0;
    private const double PrefixToHead = 1.5;

    private readonly ColumnInk _ink;
    private readonly BarEdges _edges;
    private readonly Spring[] _springs;
    private readonly double[] _ends;
    private readonly double[] _leads;

    public Spacer(ImmutableArray<ImmutableArray<Column>> units, ColumnInk ink, BarEdges edges)
    {
        Units = units;
        Columns = [.. units.SelectMany(unit => unit)];
        _ink = ink;
        _edges = edges;
        _springs = new Spring[Columns.Length];
        _ends = new double[Columns.Length];
        _leads = new double[Columns.Length];
        var before = new (int Column, double Right)?[ColumnInk.Lanes.Length];
        for (var i = 0; i < Columns.Length; i++)
        {
            var column = Columns[i];
            var (left, right) = StaffAndTab(column, lineStart: false);
            _ends[i] = right + ToBar;
            var rod = column.EndsBar || i == Columns.Length - 1 ? _ends[i] : 0;
            _springs[i] = new Spring(SpaceLaw.Width(column.Written.Length), rod);
            _leads[i] = StartsBar(i) && i > 0 ? BarRoom(column.Bar, left) : 0;
            KeepApart(i, before);
        }
    }

    /// <summary>What stays on one line each.</summary>
    public ImmutableArray<ImmutableArray<Column>> Units { get; }

    /// <summary>All columns in order.</summary>
    public ImmutableArray<Column> Columns { get; }

    /// <summary>The spring after a column.</summary>
    public Spring SpringAfter(int column) => _springs[column];

    /// <summary>From the end of the spring before a column to the column: closing bar line, opening sign, room.</summary>
    public double LeadTo(int column) => _leads[column];

    /// <summary>Room between clef, key or metre and the column that begins a line; a bar may open with a sign.</summary>
    public double StartLead(Column column, bool startsBar)
    {
        var (left, _) = StaffAndTab(column, lineStart: true);
        var opening = startsBar ? BarEdges.Width(_edges.Opening(column.Bar)) : 0;
        return opening + Math.Max(PrefixToHead + Pens.HalfHead, BarToSide + left);
    }

    /// <summary>The spring after a column that ends a line: what the next column needs is not needed here.</summary>
    public Spring SpringToEnd(int column) => _springs[column] with { Rod = _ends[column] };

    /// <summary>Whether a column is the first of its bar.</summary>
    public bool StartsBar(int column) => column == 0 || Columns[column - 1].EndsBar;

    /// <summary>Each unit as line breaking sees it.</summary>
    public ImmutableArray<BreakUnit> ForBreaking(Func<Column, Column, double> breakCost)
    {
        var units = ImmutableArray.CreateBuilder<BreakUnit>(Units.Length);
        var first = 0;
        // Silence after the last note takes room but no reading: it need not be a line of its own.
        var lastSound = LastSound();
        foreach (var unit in Units)
        {
            var (natural, least) = (0.0, 0.0);
            for (var i = first; i < first + unit.Length; i++)
            {
                var inner = i > first ? _leads[i] : 0;
                natural += inner + _springs[i].At(1);
                least += inner + _springs[i].Rod;
            }

            var end = first + unit.Length;
            var cost = end < Columns.Length ? breakCost(Columns[end - 1], Columns[end]) : 0;
            var (within, atEnd) = (_springs[end - 1], SpringToEnd(end - 1));
            units.Add(
                new BreakUnit(natural, least, _leads[first], cost)
                {
                    Spared = (within.At(1) - atEnd.At(1), within.Rod - atEnd.Rod),
                    Time = first > lastSound ? 0 : unit.Sum(column => column.Written.Length.ToDouble()),
                }
            );
            first = end;
        }

        return units.MoveToImmutable();
    }

    private int LastSound()
    {
        var last = Columns.Length - 1;
        while (last >= 0 && Columns[last].IsRest)
        {
            last--;
        }

        return last;
    }

    private double BarRoom(int bar, double left) =>
        BarEdges.Width(_edges.ClosingInLine(bar - 1))
        + OpeningWidth(bar)
        + Math.Max(BarToHead + Pens.HalfHead, BarToSide + left);

    // Where a repeat ends and the next begins, the two share the thick line.
    private double OpeningWidth(int bar) =>
        BarEdges.Width(_edges.Opening(bar))
        - (
            _edges.Opening(bar) == BarEdge.RepeatStart && _edges.Closing(bar - 1) == BarEdge.RepeatEnd
                ? Pens.ThickBar
                : 0
        );

    private (double Left, double Right) StaffAndTab(Column column, bool lineStart)
    {
        var staff = _ink.Of(column, Lane.Staff, lineStart) ?? (0, 0);
        var tab = _ink.Of(column, Lane.Tab, lineStart) ?? (0, 0);
        return (Math.Max(staff.Left, tab.Left), Math.Max(staff.Right, tab.Right));
    }

    // From one mark of a lane to the next there is room for both and a gap; a lack is shared out. All lanes in one walk:
    // a long piece does not stay in the processor's cache.
    private void KeepApart(int column, (int Column, double Right)?[] before)
    {
        for (var lane = 0; lane < before.Length; lane++)
        {
            if (_ink.Of(Columns[column], ColumnInk.Lanes[lane]) is not { } here)
            {
                continue;
            }

            if (before[lane] is { } last)
            {
                var gap = ColumnInk.Lanes[lane] == Lane.Count ? SpaceLaw.WordGap : SpaceLaw.LeastGap;
                Widen(last.Column, column, last.Right + gap + here.Left);
            }

            before[lane] = (column, here.Right);
        }
    }

    private void Widen(int from, int to, double needed)
    {
        var given = 0.0;
        for (var i = from; i < to; i++)
        {
            given += _springs[i].Rod + _leads[i + 1];
        }

        for (var i = from; i < to && given < needed; i++)
        {
            _springs[i] = _springs[i] with { Rod = _springs[i].Rod + ((needed - given) / (to - from)) };
        }
    }
}
