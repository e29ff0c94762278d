using System.Globalization;
using System.Text;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Writes the lines above the first system: title, instrument, metre, tempo and the signs in use.</summary>
internal static class TabHeaderWriter
{
    private const int UsualFrets = 22;

    public static string Write(Realization realization, TabRows rows)
    {
        var recipe = realization.Line.Recipe;
        var page = new StringBuilder();
        AppendTitle(page, recipe.Title ?? recipe.Id);
        page.Append(
            CultureInfo.InvariantCulture,
            $"Tuning: {TabTuning.Write(recipe.Instrument.Tuning)} (low to high)\n"
        );
        if (recipe.Instrument.Capo > 0)
        {
            page.Append(CultureInfo.InvariantCulture, $"Capo: {recipe.Instrument.Capo}\n");
        }

        if (recipe.Instrument.Frets != UsualFrets)
        {
            page.Append(CultureInfo.InvariantCulture, $"Frets: {recipe.Instrument.Frets}\n");
        }

        if (recipe.Notes is { Scale: { } scale } notes)
        {
            page.Append(CultureInfo.InvariantCulture, $"Notes: {notes.Root} {scale}\n");
        }

        AppendRhythm(page, recipe.Rhythm);
        AppendSigns(page, rows);
        return page.ToString();
    }

    private static void AppendTitle(StringBuilder page, string? title)
    {
        if (title is null)
        {
            return;
        }

        var line = new string([.. title.Select(c => char.IsControl(c) ? ' ' : c)]).Trim();
        if (line.Length > 0)
        {
            page.Append(TabPage.IsPlainText(line) ? line : "Title: " + line).Append('\n');
        }
    }

    private static void AppendRhythm(StringBuilder page, RhythmPlan rhythm)
    {
        page.Append(
            CultureInfo.InvariantCulture,
            $"Meter: {rhythm.Meter}, {rhythm.NotesPerBeat} to the beat\n"
        );
        if (rhythm.StartOffset != Fraction.Zero)
        {
            page.Append(
                CultureInfo.InvariantCulture,
                $"Start: {rhythm.StartOffset} after the first bar line\n"
            );
        }

        if (rhythm.TempoBpm is { } tempo)
        {
            page.Append(CultureInfo.InvariantCulture, $"Tempo: {tempo:R} beats a minute\n");
        }

        if (!rhythm.Swing.IsStraight)
        {
            page.Append(CultureInfo.InvariantCulture, $"Swing: {rhythm.Swing.Share}\n");
        }
    }

    private static void AppendSigns(StringBuilder page, TabRows rows)
    {
        if (!rows.Strokes.IsEmpty)
        {
            var strokes = rows.Strokes.Order(StringComparer.Ordinal).Select(SignMeaning);
            page.Append("Signs: ").AppendJoin(", ", strokes).Append('\n');
        }

        if (rows.HasFingers)
        {
            page.Append("Signs: 1-4 fretting fingers, 0 open string\n");
        }
    }

    private static string SignMeaning(string sign) =>
        sign switch
        {
            "n" => "n down-stroke",
            "v" => "v up-stroke",
            "p" => "p thumb",
            "i" => "i index",
            "m" => "m middle",
            _ => "a ring",
        };
}
