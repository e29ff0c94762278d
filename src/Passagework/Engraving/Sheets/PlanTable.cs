using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Setting;

namespace Passagework.Engraving.Sheets;

/// <summary>The plan of the weeks: tempo, when to go up, how long, strokes, what to listen for.</summary>
internal static class PlanTable
{
    private const double LabelMm = 23;
    private const double PaddingMm = 1.3;
    private const int MostLines = 6;

    /// <summary>The rows that have words, ruled above, below and between.</summary>
    public static Figure Draw(SheetContent content, double width, List<string> remarks)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var y = 0.0;
        foreach (var (label, phrases) in Rows(content))
        {
            var text = TextBlock.Set(phrases, SheetStyles.Plan, width - LabelMm, MostLines);
            if (text.Lines == 0)
            {
                continue;
            }

            if (text.IsCut)
            {
                remarks.Add($"'{label}' is longer than six lines and was cut");
            }

            var id = label.Replace(' ', '-');
            marks.Add(Rules.Across(0, width, y, $"plan-rule-{id}", y == 0 ? Ink.Main : Ink.Rule));
            y += PaddingMm;
            var set = TextBlock.Set(label, SheetStyles.Label, LabelMm);
            var lower = SheetStyles.Plan.BaselineMm - SheetStyles.Label.BaselineMm;
            marks.AddRange(set.MarksAt(new Point(0, y + lower), $"plan-label-{id}", "label"));
            marks.AddRange(text.MarksAt(new Point(LabelMm, y), $"plan-{id}", "plan"));
            y += text.HeightMm + PaddingMm;
        }

        if (y > 0)
        {
            marks.Add(Rules.Across(0, width, y, "plan-rule-last", Ink.Main));
        }

        return new Figure(width, y, marks.ToImmutable());
    }

    private static IEnumerable<(string Label, ImmutableArray<Phrase> Text)> Rows(SheetContent content) =>
        [
            ("tempo", content.Tempo),
            ("go up", [content.GoUp]),
            ("how long", [content.HowLong]),
            ("strokes", [content.Strokes]),
            ("listen for", [content.ListenFor]),
        ];
}
