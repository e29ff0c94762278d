using Passagework.Engraving.Fonts;
using Passagework.Engraving.Setting;
using Passagework.Foundation;

namespace Passagework.Engraving.Sheets;

/// <summary>Whether the faces can print the words of a sheet.</summary>
internal static class SheetTexts
{
    // Longer texts are refused before they are measured.
    private const int MostLetters = 4000;

    /// <summary>The first text that cannot be printed; null when all can.</summary>
    public static Fault? Check(SheetContent content)
    {
        foreach (var (field, text) in content.Texts)
        {
            if (text.Length > MostLetters)
            {
                return new Fault($"the text has {text.Length} letters", field, $"at most {MostLetters}");
            }
        }

        return string.IsNullOrWhiteSpace(content.Title)
            ? new Fault("a sheet needs a title", "title")
            : content
                .Texts.Select(pair => Missing(pair.Field, pair.Text))
                .FirstOrDefault(fault => fault is not null);
    }

    /// <summary>The letters of one text that its face lacks; null when it has all.</summary>
    public static Fault? Missing(string field, string text) =>
        TextWord
            .Of([text], StyleOf(field))
            .SelectMany(word => word.Runs)
            .Select(Missing)
            .FirstOrDefault(fault => fault is not null)
            is { } missing
            ? missing with
            {
                Where = field,
            }
            : null;

    private static Fault? Missing(TextRun run)
    {
        if (run.Sign == 0)
        {
            return TextFont.Missing(run.Text, run.Face);
        }

        return MusicFont.Has(run.Sign) ? null : new Fault($"the music font has no sign U+{run.Sign:X4}");
    }

    private static TextStyle StyleOf(string field) =>
        field switch
        {
            "title" => SheetStyles.Titles[0].Style,
            "purpose" => SheetStyles.Purpose,
            "room" or "teacher" => SheetStyles.Foot,
            _ => SheetStyles.Plan,
        };
}
