using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>A run of cells with their columns, drawn between two bar lines or up to the edge of the page.</summary>
/// <param name="Cells">Each cell with its column, counted from the first column of the stretch.</param>
/// <param name="Width">Columns of the stretch, its bar line not counted.</param>
/// <param name="Closed">Whether a bar line follows.</param>
internal sealed record TabStretch(ImmutableArray<(TabCell Cell, int Column)> Cells, int Width, bool Closed)
{
    public int Columns => Width + (Closed ? 1 : 0);
}

/// <summary>Gives every cell a column and breaks the bars into systems.</summary>
/// <remarks>
/// Columns grow evenly with time where a bar fits on one line that way, else each event takes what it needs. Systems
/// break at bar lines; a bar that is too long for one line is cut between events, at a beat where one is near.
/// </remarks>
internal static class TabSystemBreaker
{
    public static ImmutableArray<ImmutableArray<TabStretch>> Break(
        ImmutableArray<ImmutableArray<TabCell>> bars,
        int available
    )
    {
        var systems = ImmutableArray.CreateBuilder<ImmutableArray<TabStretch>>();
        var system = ImmutableArray.CreateBuilder<TabStretch>();
        var used = 0;
        foreach (var stretch in bars.SelectMany(bar => Stretches(bar, available)))
        {
            if (used > 0 && (used + stretch.Columns > available || !system[^1].Closed))
            {
                systems.Add(system.DrainToImmutable());
                used = 0;
            }

            system.Add(stretch);
            used += stretch.Columns;
        }

        systems.Add(system.DrainToImmutable());
        return systems.DrainToImmutable();
    }

    private static IEnumerable<TabStretch> Stretches(ImmutableArray<TabCell> bar, int available)
    {
        var even = Place(bar, EvenGaps(bar), closed: true);
        if (even.Columns <= available)
        {
            yield return even;
            yield break;
        }

        var rest = bar;
        while (!rest.IsEmpty)
        {
            var count = FittingCount(rest, available);
            yield return Place(
                rest[..count],
                [.. rest[..count].Select(cell => cell.Need)],
                count == rest.Length
            );
            rest = rest[count..];
        }
    }

    private static TabStretch Place(ImmutableArray<TabCell> cells, ImmutableArray<int> gaps, bool closed)
    {
        var placed = ImmutableArray.CreateBuilder<(TabCell, int)>(cells.Length);
        var column = 1;
        foreach (var (cell, gap) in cells.Zip(gaps))
        {
            placed.Add((cell, column));
            column += gap;
        }

        return new TabStretch(placed.MoveToImmutable(), column, closed);
    }

    private static ImmutableArray<int> EvenGaps(ImmutableArray<TabCell> bar)
    {
        var unit = bar.Select(cell => cell.Event.Length).Aggregate(CommonUnit);
        var units = bar.Select(cell => (int)Math.Min((cell.Event.Length / unit).Floor(), 1000)).ToList();
        var perUnit = bar.Zip(units).Max(pair => (pair.First.Need + pair.Second - 1) / pair.Second);
        return [.. units.Select(count => count * perUnit)];
    }

    private static Fraction CommonUnit(Fraction a, Fraction b)
    {
        while (b != Fraction.Zero)
        {
            (a, b) = (b, a.Modulo(b));
        }

        return a;
    }

    // How many cells go on one line: all, else up to the last one before a beat in the second half, else what fits.
    private static int FittingCount(ImmutableArray<TabCell> cells, int available)
    {
        var width = 2;
        var fits = 0;
        while (fits < cells.Length && width + cells[fits].Need <= available)
        {
            width += cells[fits].Need;
            fits++;
        }

        if (fits == cells.Length)
        {
            return fits;
        }

        for (var count = fits; count > fits / 2; count--)
        {
            if (cells[count].Count.Length > 0 && char.IsAsciiDigit(cells[count].Count[0]))
            {
                return count;
            }
        }

        return Math.Max(fits, 1);
    }
}
