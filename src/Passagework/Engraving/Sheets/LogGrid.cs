using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Setting;

namespace Passagework.Engraving.Sheets;

/// <summary>The grid in which a student writes what happened, a row a day.</summary>
internal static class LogGrid
{
    /// <summary>Rows of a log that has to make room for music.</summary>
    public const int FewRows = 5;

    /// <summary>Width of a log that shares its place with notes.</summary>
    public const double NarrowMm = 100;

    private const double RowMm = 7.4;
    private const double UnderHeadMm = 0.8;
    private static readonly ImmutableArray<string> Heads =
    [
        "day",
        "best clean tempo",
        "clean tries",
        "what you noticed",
    ];
    private static readonly ImmutableArray<double> WideMm = [0, 15, 49, 83];
    private static readonly ImmutableArray<double> NarrowColumnsMm = [0, 12, 44.5, 67];

    /// <summary>As many rows as names, nothing at all without names; where a name is empty the student writes the day.</summary>
    public static Figure Draw(ImmutableArray<string> days, double width)
    {
        if (days.IsEmpty)
        {
            return new Figure(0, 0, []);
        }

        var columns = width > NarrowMm ? WideMm : NarrowColumnsMm;
        var top = SheetStyles.Label.LeadingMm + UnderHeadMm;
        var bottom = HeightMm(days.Length);
        return new Figure(
            width,
            bottom,
            [
                .. Heads.SelectMany((head, column) => Head(head, columns[column])),
                .. Enumerable.Range(0, days.Length + 1).Select(row => Across(row, days.Length, top, width)),
                .. Enumerable
                    .Range(1, columns.Length - 1)
                    .Select(column => Rules.Down(columns[column], top, bottom, $"log-column-{column}")),
                .. days.SelectMany((day, row) => Row(day, row, top + (row * RowMm), columns)),
            ]
        );
    }

    /// <summary>Height of a log with so many rows.</summary>
    public static double HeightMm(int rows) => SheetStyles.Label.LeadingMm + UnderHeadMm + (rows * RowMm);

    private static IEnumerable<Mark> Head(string head, double left) =>
        TextBlock
            .Set(head, SheetStyles.Label, SheetBox.WidthMm)
            .MarksAt(new Point(left, 0), $"log-head-{head.Replace(' ', '-')}", "label");

    private static LineMark Across(int row, int rows, double top, double width) =>
        Rules.Across(
            0,
            width,
            top + (row * RowMm),
            $"log-rule-{row}",
            row == 0 || row == rows ? Ink.Main : Ink.Rule
        );

    private static IEnumerable<Mark> Row(string day, int row, double top, ImmutableArray<double> columns)
    {
        var inside = top + ((RowMm - SheetStyles.Day.LeadingMm) / 2);
        var name = TextBlock.Set(day, SheetStyles.Day, columns[1] - 1, mostLines: 1);
        var middle = (columns[2] + columns[3]) / 2;
        return
        [
            .. name.MarksAt(new Point(0, inside), $"log-day-{row}", "log-day"),
            .. TextBlock
                .Set("of", SheetStyles.Of, columns[1])
                .MarksAround(new Point(middle, inside), $"log-of-{row}", "log-of"),
        ];
    }
}
