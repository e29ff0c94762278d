using System.Collections.Immutable;
using System.Globalization;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Setting;
using Passagework.Foundation;

namespace Passagework.Engraving.Sheets;

/// <summary>The head of a sheet: title, purpose, for whom and from when, over a double rule.</summary>
internal static class SheetHeader
{
    private const double LabelMm = 13;
    private const double MostPersonMm = 48;
    private const double LineToWriteOnMm = 38;
    private const double BetweenMm = 8;
    private const double ThickMm = 0.8;
    private const double ThickTopMm = 1.9;
    private const double ThinTopMm = 3.6;

    public static Figure Draw(SheetContent content, List<string> remarks)
    {
        var people = People(content);
        var width = SheetBox.WidthMm - people.WidthMm - BetweenMm;
        var title = Title(content.Title, width);
        var purpose = TextBlock.Set(content.Purpose, SheetStyles.Purpose, width, mostLines: 2);
        if (title.IsCut)
        {
            remarks.Add("the title is longer than three lines and was cut");
        }

        if (purpose.IsCut)
        {
            remarks.Add("the purpose is longer than two lines and was cut");
        }

        var text = Math.Max(title.HeightMm + purpose.HeightMm, people.HeightMm);
        var height = text + ThinTopMm + Rules.ThinMm;
        return new Figure(
            SheetBox.WidthMm,
            height,
            [
                .. title.MarksAt(new Point(0, text - purpose.HeightMm - title.HeightMm), "title", "title"),
                .. purpose.MarksAt(new Point(0, text - purpose.HeightMm), "purpose", "purpose"),
                .. people.At(new Point(SheetBox.WidthMm - people.WidthMm, text - people.HeightMm)),
                .. DoubleRule(text),
            ]
        );
    }

    /// <summary>The largest size in which a title keeps to its lines; the smallest is cut after three lines.</summary>
    private static TextBlock Title(string title, double width)
    {
        foreach (var (style, lines) in SheetStyles.Titles)
        {
            var block = TextBlock.Set(title, style, width, lines);
            if (!block.IsCut)
            {
                return block;
            }
        }

        var (last, most) = SheetStyles.Titles[^1];
        return TextBlock.Set(title, last, width, most);
    }

    private static Figure People(SheetContent content)
    {
        var name = TextBlock.Set(content.Student, SheetStyles.Person, MostPersonMm, mostLines: 2);
        var when = TextBlock.Set(When(content), SheetStyles.Person, MostPersonMm, mostLines: 2);
        var width = LabelMm + Math.Max(Width(name), Width(when));
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var y = Person(marks, "for", name, 0, width);
        y = Person(marks, "from", when, y, width);
        return new Figure(width, y, marks.ToImmutable());
    }

    private static double Width(TextBlock block) => block.Lines == 0 ? LineToWriteOnMm : block.WidthMm;

    private static double Person(
        ImmutableArray<Mark>.Builder marks,
        string label,
        TextBlock block,
        double y,
        double width
    )
    {
        var style = SheetStyles.Person;
        // The label stands on the baseline of what it names.
        var lower = style.BaselineMm - SheetStyles.Label.BaselineMm;
        var set = TextBlock.Set(label, SheetStyles.Label, LabelMm);
        marks.AddRange(set.MarksAt(new Point(0, y + lower), $"label-{label}", "label"));
        if (block.Lines == 0)
        {
            marks.Add(Rules.Across(LabelMm, width, y + style.BaselineMm + 0.4, $"line-{label}"));
            return y + style.LeadingMm + 1.2;
        }

        marks.AddRange(block.MarksAt(new Point(LabelMm, y), $"text-{label}", "person"));
        return y + block.HeightMm;
    }

    private static string When(SheetContent content)
    {
        var from = content.From?.ToString("d MMMM", CultureInfo.InvariantCulture) ?? "";
        var weeks = content.Weeks is { } count ? NumberWords.Of(count, "week") : "";
        return string.Join(", ", new[] { from, weeks }.Where(part => part.Length > 0));
    }

    private static IEnumerable<Mark> DoubleRule(double below)
    {
        yield return Rules.Across(
            0,
            SheetBox.WidthMm,
            below + ThickTopMm + (ThickMm / 2),
            "head-thick",
            Ink.Main
        ) with
        {
            WidthMm = ThickMm,
        };
        yield return Rules.Across(
            0,
            SheetBox.WidthMm,
            below + ThinTopMm + (Rules.ThinMm / 2),
            "head-thin",
            Ink.Main
        );
    }
}
