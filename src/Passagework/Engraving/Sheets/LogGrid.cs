using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Setting;

namespace Passagework.Engraving.Sheets;

/// <summary>The grid in which a student writes what happened, a row a day.</summary>
internal static class LogGrid
{
    /// <summary>Rows of a log that has to make room for music.</summary>
    public const int FewRows = 5;

    /// <summary>Usual height of a row.</summary>
    public const double RowMm = 7.4;

    /// <summary>Height of a row where there is much music; still enough for a pencil.</summary>
    public const double LowRowMm = 6.6;

    /// <summary>Height of a row where there is room to spare.</summary>
    public const double HighRowMm = 9.4;

    private const double UnderHeadMm = 0.8;
    private static readonly ImmutableArray<string> Heads =
    [
        "day",
        "best clean tempo",
        "clean tries",
        "what you noticed",
    ];
    private static readonly ImmutableArray<double> ColumnsMm = [0, 15, 49, 83];

    /// <summary>As many rows as names, over the whole width; nothing at all without names.</summary>
    public static Figure Draw(ImmutableArray<string> days, double rowMm)
    {
        if (days.IsEmpty)
        {
            return new Figure(0, 0, []);
        }

        var top = SheetStyles.Label.LeadingMm + UnderHeadMm;
        var bottom = HeightMm(days.Length, rowMm);
        return new Figure(
            SheetBox.WidthMm,
            bottom,
            [
                .. Heads.SelectMany((head, column) => Head(head, ColumnsMm[column])),
                .. Enumerable
                    .Range(0, days.Length + 1)
                    .Select(row => Across(row, days.Length, top + (row * rowMm))),
                .. Enumerable
                    .Range(1, ColumnsMm.Length - 1)
                    .Select(column => Rules.Down(ColumnsMm[column], top, bottom, $"log-column-{column}")),
                .. days.SelectMany(
                    (day, row) =>
                        Row(day, row, top + (row * rowMm) + ((rowMm - SheetStyles.Day.LeadingMm) / 2))
                ),
            ]
        );
    }

    /// <summary>Height of a log with so many rows.</summary>
    public static double HeightMm(int rows, double rowMm) =>
        SheetStyles.Label.LeadingMm + UnderHeadMm + (rows * rowMm);

    private static IEnumerable<Mark> Head(string head, double left) =>
        TextBlock
            .Set(head, SheetStyles.Label, SheetBox.WidthMm)
            .MarksAt(new Point(left, 0), $"log-head-{head.Replace(' ', '-')}", "label");

    private static LineMark Across(int row, int rows, double y) =>
        Rules.Across(
            0,
            SheetBox.WidthMm,
            y,
            $"log-rule-{row}",
            row == 0 || row == rows ? Ink.Main : Ink.Rule
        );

    private static IEnumerable<Mark> Row(string day, int row, double inside)
    {
        var name = TextBlock.Set(day, SheetStyles.Day, ColumnsMm[1] - 1, mostLines: 1);
        var middle = (ColumnsMm[2] + ColumnsMm[3]) / 2;
        return
        [
            .. name.MarksAt(new Point(0, inside), $"log-day-{row}", "log-day"),
            .. TextBlock
                .Set("of", SheetStyles.Of, ColumnsMm[1])
                .MarksAround(new Point(middle, inside), $"log-of-{row}", "log-of"),
        ];
    }
}
