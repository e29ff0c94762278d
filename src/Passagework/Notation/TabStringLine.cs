using System.Buffers;

namespace Passagework.Notation;

/// <summary>A line of text that stands for one string.</summary>
/// <param name="Line">The line.</param>
/// <param name="Label">The name before the string, letter in upper case; null when there is none.</param>
/// <param name="LabelIsLower">Whether the label's letter was written in lower case.</param>
/// <param name="Start">Index of the first column behind label and bar.</param>
/// <param name="HasBar">Whether a bar stood there.</param>
internal sealed record TabStringLine(TabLine Line, string? Label, bool LabelIsLower, int Start, bool HasBar)
{
    private const string Fillers = "-–—−_";
    private const string Signs = "0123456789|hpbr/\\~x()";
    private const int LeastFillers = 3;
    private static readonly SearchValues<char> MusicSigns = SearchValues.Create("-–—−0123456789");

    /// <summary>What stands behind label and bar.</summary>
    public string Body => Line.Text.Length > Start ? Line.Text[Start..] : "";

    public static bool IsFiller(char c) => c == ' ' || c == '\u00A0' || c == '=' || c == '\f' || IsDash(c);

    /// <summary>The line as a string of the tab; null when it is something else.</summary>
    public static TabStringLine? Of(TabLine line)
    {
        var text = line.Text;
        var at = SkipSpaces(text, 0);
        var (label, isLower, afterLabel) = ReadLabel(text, at);
        var hasBar = afterLabel < text.Length && text[afterLabel] is '|' or ':';
        var start = hasBar ? afterLabel + 1 : afterLabel;
        var body = text.AsSpan(Math.Min(start, text.Length));
        var begins = label is not null || hasBar || BeginsLikeString(body);
        return begins && LooksLikeString(body, hasBar) && !(label is null && LooksLikeStems(body))
            ? new TabStringLine(line, label, isLower, start, hasBar)
            : null;
    }

    private static (string? Label, bool IsLower, int After) ReadLabel(string text, int at)
    {
        if (at >= text.Length || char.ToUpperInvariant(text[at]) is < 'A' or > 'G')
        {
            return (null, false, at);
        }

        var end = at + 1;
        if (end < text.Length && text[end] is '#' or 'b' or '♯' or '♭')
        {
            end++;
        }

        var name = char.ToUpperInvariant(text[at]) + text[(at + 1)..end].Replace('♯', '#').Replace('♭', 'b');
        if (end < text.Length && char.IsAsciiDigit(text[end]))
        {
            name += text[end];
            end++;
        }

        var after = SkipSpaces(text, end);
        return after < text.Length && (text[after] is '|' or ':' || IsDash(text[after]))
            ? (name, char.IsAsciiLetterLower(text[at]), after)
            : (null, false, at);
    }

    // Without label and bar a string begins with a filler or a fret; words and "PM---" don't.
    private static bool BeginsLikeString(ReadOnlySpan<char> body) =>
        !body.IsEmpty && (IsDash(body[0]) || char.IsAsciiDigit(body[0]) || body[0] is '(' or 'x' or '/');

    // Stems of a rhythm drawn with bars: spaces between, neither fret nor dash.
    private static bool LooksLikeStems(ReadOnlySpan<char> body) =>
        body.Contains(' ') && !body.ContainsAny(MusicSigns);

    // At least three in five characters are signs of tab, and there is a bar or a run of fillers. A remark behind
    // the last bar line doesn't count.
    private static bool LooksLikeString(ReadOnlySpan<char> body, bool hasBar)
    {
        var (known, other, dashes, bars) = (0, 0, 0, hasBar ? 1 : 0);
        var lastBar = body.LastIndexOf('|');
        foreach (var c in lastBar > 0 ? body[..(lastBar + 1)] : body)
        {
            dashes += IsDash(c) ? 1 : 0;
            bars += c == '|' ? 1 : 0;
            if (c is not (' ' or '\u00A0'))
            {
                var isKnown = IsDash(c) || Signs.Contains(c, StringComparison.Ordinal);
                known += isKnown ? 1 : 0;
                other += isKnown ? 0 : 1;
            }
        }

        return known * 2 >= other * 3 && (bars > 0 || dashes >= LeastFillers);
    }

    private static bool IsDash(char c) => Fillers.Contains(c, StringComparison.Ordinal);

    private static int SkipSpaces(string text, int at)
    {
        while (at < text.Length && text[at] is ' ' or '\u00A0')
        {
            at++;
        }

        return at;
    }
}
