using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Reads the systems of a page one after another into bars.</summary>
internal static class TabSystems
{
    public static Outcome<TabPiece> Read(TabPage page, TabReading options, TabFindings findings)
    {
        var order = TabOrder.Of(page, findings);
        var piece = new TabPiece(page.Header, order, []);
        var chords = new TabChords(findings);
        var rows = new TabRowReader(page, options, findings);
        var count = 0;
        foreach (var system in page.Systems)
        {
            if (!TabGrid.Of(system.Strings, findings).TryGet(out var grid, out var fault))
            {
                return fault;
            }

            var strings = Scan(grid, order, page.Header.Frets, findings);
            count += strings.Count;
            if (count > TabPiece.MostEvents)
            {
                return new Fault(
                    "too many notes",
                    grid.SpotAt(0, 0).ToString(),
                    $"at most {TabPiece.MostEvents}"
                );
            }

            var events = chords.Merge(strings);
            var times = rows.Apply(system, system.Strings[0].Start, events) ?? grid.Times;
            events.Sort((a, b) => a.Column.CompareTo(b.Column));
            AddBars(piece.Bars, grid, events, times);
        }

        return piece.Bars.Count > 0
            ? piece
            : new Fault(
                "no notes in the tab",
                page.Systems[0].Strings[0].Line.At(0).ToString(),
                "frets on the strings"
            );
    }

    private static List<TabReadEvent> Scan(TabGrid grid, TabOrder order, int? frets, TabFindings findings) =>
        [
            .. grid.Strings.SelectMany(
                (line, at) => TabLineScanner.Scan(line, grid.Bodies[at], order.StringAt(at), frets, findings)
            ),
        ];

    private static void AddBars(List<TabReadBar> bars, TabGrid grid, List<TabReadEvent> events, int times)
    {
        var first = bars.Count;
        var next = 0;
        var column = 0;
        BarAt(bars, grid.SpotAt(0, column)).StartsRepeat |= grid.StartsRepeat;
        foreach (var line in grid.BarLines.Append(new TabBarLine(int.MaxValue, int.MaxValue, false, false)))
        {
            var end = Math.Min(line.First, grid.Width);
            var bar = BarAt(bars, grid.SpotAt(0, column));
            for (; next < events.Count && events[next].Column < end; next++)
            {
                bar.Events.Add(events[next]);
            }

            bar.Columns += Math.Max(0, end - column);
            bar.Closed = line.First < int.MaxValue;
            bar.Times = line.DotsBefore ? Math.Max(times, 2) : 1;
            column = line.Last + (bar.Closed ? 1 : 0);
            if (line.DotsAfter && bar.Closed)
            {
                bars.Add(new TabReadBar { Spot = grid.SpotAt(0, column), StartsRepeat = true });
            }
        }

        DropEmptyEnd(bars);
        RepeatSystem(bars, first, times);
    }

    // A bar goes on where the last system ended without a bar line.
    private static TabReadBar BarAt(List<TabReadBar> bars, TabSpot spot)
    {
        if (bars.Count == 0 || bars[^1].Closed)
        {
            bars.Add(new TabReadBar { Spot = spot });
        }

        return bars[^1];
    }

    private static void DropEmptyEnd(List<TabReadBar> bars)
    {
        if (!bars[^1].Closed && bars[^1].Events.Count == 0)
        {
            bars.RemoveAt(bars.Count - 1);
        }
    }

    // A count without repeat dots repeats the system's bars.
    private static void RepeatSystem(List<TabReadBar> bars, int first, int times)
    {
        if (times > 1 && first < bars.Count && bars.Skip(first).All(bar => bar.Times == 1))
        {
            bars[first].StartsRepeat = true;
            bars[^1].Times = times;
        }
    }
}
