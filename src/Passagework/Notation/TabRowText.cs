using System.Globalization;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>One sign of a row with its column.</summary>
internal readonly record struct TabSign<T>(T Value, int Column);

/// <summary>Tells what a row beside a system is and reads its signs; null where the row is something else.</summary>
internal static class TabRowText
{
    private static readonly string[] Labels =
    [
        TabRows.Count,
        TabRows.Rhythm,
        TabRows.Group,
        TabRows.Accent,
        TabRows.Sound,
        TabRows.Stroke,
        TabRows.Finger,
    ];

    private delegate bool SignReader<T>(string text, ref int at, out T sign);

    /// <summary>The label at the beginning of a row, also in the plural and with a colon.</summary>
    public static string? LabelOf(string line)
    {
        var trimmed = line.TrimStart();
        var end = trimmed.IndexOf(' ', StringComparison.Ordinal);
        var word = (end < 0 ? trimmed : trimmed[..end]).TrimEnd(':').TrimEnd('s');
        return Array.Find(Labels, label => label.Equals(word, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>The row with its label blanked, so that columns stay.</summary>
    public static string WithoutLabel(string line)
    {
        if (LabelOf(line) is null)
        {
            return line;
        }

        var from = line.Length - line.TrimStart().Length;
        var end = line.IndexOf(' ', from);
        return end < 0 ? "" : new string(' ', end) + line[end..];
    }

    /// <summary>Lengths, a rest marked.</summary>
    public static List<TabSign<(Fraction Length, bool IsRest)>>? Lengths(string row) =>
        Read<(Fraction, bool)>(
            row,
            static (string text, ref int at, out (Fraction, bool) sign) =>
            {
                var isRest = text[at] == 'r';
                var next = isRest ? at + 1 : at;
                var done = TabLength.TryRead(text, ref next, out var length);
                at = done ? next : at;
                sign = (length, isRest);
                return done;
            }
        );

    /// <summary>Counted beats from the bar line, from 0.</summary>
    public static List<TabSign<Fraction>>? Counts(string row)
    {
        var words = Read<(int Beat, string Word)>(row, TryReadCount);
        if (words is null || words.Count == 0 || words[0].Value.Beat == 0)
        {
            return null;
        }

        var counts = new List<TabSign<Fraction>>();
        var beat = 0;
        foreach (var ((number, word), column) in words)
        {
            beat = number > 0 ? number : beat;
            counts.Add(new TabSign<Fraction>(Fraction.Of(beat - 1) + PartOf(word), column));
        }

        return counts;
    }

    /// <summary>Strokes; <c>^</c> is told apart by the option, and a row that needs it is empty without.</summary>
    public static List<TabSign<Stroke>>? Strokes(string row, CaretStrokes carets)
    {
        var letters = Letters(row, "nvduDU⊓V^pima");
        if (letters is null)
        {
            return null;
        }

        var hasCaret = letters.Exists(letter => letter.Value == '^');
        if (hasCaret && carets == CaretStrokes.Unknown)
        {
            return [];
        }

        // Beside a caret, v is the other stroke; elsewhere it is up.
        var caretIsDown = hasCaret && carets == CaretStrokes.CaretIsDown;
        return letters.ConvertAll(letter => new TabSign<Stroke>(
            StrokeOf(letter.Value, caretIsDown, hasCaret),
            letter.Column
        ));
    }

    /// <summary>Fretting fingers 0 to 4.</summary>
    public static List<TabSign<int>>? Fingers(string row) =>
        Letters(row, "01234")?.ConvertAll(letter => new TabSign<int>(letter.Value - '0', letter.Column));

    /// <summary>Where accents stand.</summary>
    public static List<TabSign<char>>? Accents(string row) => Letters(row, ">");

    /// <summary>Where groups begin (a number, −1 for the next) and where they end (null).</summary>
    public static List<TabSign<int?>>? Groups(string row) =>
        Read<int?>(
            row,
            static (string text, ref int at, out int? sign) =>
            {
                sign = null;
                if (text[at] == ']')
                {
                    at++;
                    return true;
                }

                if (text[at] != '[')
                {
                    return false;
                }

                var digits = DigitsAt(text, at + 1);
                sign = digits is > 0 and < 9 ? Number(text, at + 1, digits) : -1;
                at += 1 + digits;
                return digits < 9;
            }
        );

    /// <summary>The first word when the row says how notes sound: palm-muted, let ring or staccato.</summary>
    public static string? Sound(string row)
    {
        var text = row.Trim();
        string[] words = ["PM", "P.M.", "P.M", "LR", "let ring", "l.r."];
        var word = Array.Find(words, word => text.StartsWith(word, StringComparison.OrdinalIgnoreCase));
        if (
            word is not null
            && text[word.Length..].All(c => "-–—.|() ".Contains(c, StringComparison.Ordinal))
        )
        {
            return word;
        }

        return text.Length > 0 && text.All(c => c is '.' or ' ') ? "staccato" : null;
    }

    private static List<TabSign<char>>? Letters(string row, string allowed) =>
        Read<char>(
            row,
            (string text, ref int at, out char sign) =>
            {
                sign = text[at];
                at++;
                return allowed.Contains(sign, StringComparison.Ordinal);
            }
        );

    private static List<TabSign<T>>? Read<T>(string row, SignReader<T> reader)
    {
        var signs = new List<TabSign<T>>();
        var at = 0;
        while (at < row.Length)
        {
            if (row[at] is ' ' or '\u00A0')
            {
                at++;
                continue;
            }

            var column = at;
            if (!reader(row, ref at, out var sign))
            {
                return null;
            }

            signs.Add(new TabSign<T>(sign, column));
        }

        return signs;
    }

    private static bool TryReadCount(string text, ref int at, out (int Beat, string Word) sign)
    {
        var digits = DigitsAt(text, at);
        if (digits > 0)
        {
            sign = (digits <= 2 ? Number(text, at, digits) : 0, "");
            at += digits;
            return sign.Beat is > 0 and <= 16;
        }

        string[] words = ["trip", "let", "and", "ah", "&", "+", "e", "a"];
        var from = at;
        var word = Array.Find(words, word => string.CompareOrdinal(text, from, word, 0, word.Length) == 0);
        sign = (0, word ?? "");
        at += word?.Length ?? 0;
        return word is not null;
    }

    private static Fraction PartOf(string word) =>
        word switch
        {
            "" => Fraction.Zero,
            "trip" => Fraction.Of(1, 3),
            "let" => Fraction.Of(2, 3),
            "e" => Fraction.Of(1, 4),
            "a" or "ah" => Fraction.Of(3, 4),
            _ => Fraction.Of(1, 2),
        };

    private static Stroke StrokeOf(char letter, bool caretIsDown, bool hasCaret) =>
        letter switch
        {
            'n' or 'd' or 'D' or '⊓' => Stroke.Down,
            '^' => caretIsDown ? Stroke.Down : Stroke.Up,
            'v' when hasCaret && !caretIsDown => Stroke.Down,
            'p' => Stroke.Thumb,
            'i' => Stroke.Index,
            'm' => Stroke.Middle,
            'a' => Stroke.Ring,
            _ => Stroke.Up,
        };

    private static int DigitsAt(string text, int at)
    {
        var end = at;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
        {
            end++;
        }

        return end - at;
    }

    private static int Number(string text, int at, int digits) =>
        int.Parse(text.AsSpan(at, digits), NumberStyles.None, CultureInfo.InvariantCulture);
}
