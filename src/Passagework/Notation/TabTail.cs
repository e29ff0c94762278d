using System.Globalization;

namespace Passagework.Notation;

/// <summary>What stands behind the last bar line of a string: a repeat count, a remark, or more music.</summary>
internal static class TabTail
{
    private const int MostTimes = 99;
    private const string MusicLetters = "hpbrxtsvHPBRXTSV";

    /// <summary>The body without count and remark; the count goes to <paramref name="times"/>.</summary>
    public static string Cut(TabStringLine line, TabFindings findings, ref int times)
    {
        var body = line.Body.TrimEnd();
        var bar = body.LastIndexOf('|');
        if (bar <= 0 || bar == body.Length - 1)
        {
            return body;
        }

        var tail = body[(bar + 1)..];
        var spot = line.Line.At(line.Start + bar + 1);
        if (TimesOf(tail) is { } count)
        {
            if (count is < 1 or > MostTimes)
            {
                findings.Warn($"a repeat of {count} times, left out", spot);
                return body[..(bar + 1)];
            }

            times = count;
            return body[..(bar + 1)];
        }

        var isRemark = tail[0] == ' ' && tail.Any(c => char.IsLetter(c) && !MusicLetters.Contains(c));
        if (!isRemark)
        {
            return body;
        }

        findings.Keep(new TabMark(TabMarkKind.Text, tail.Trim(), spot.Line, spot.Column));
        return body[..(bar + 1)];
    }

    /// <summary>The number in <c>x4</c>, <c>4x</c>, <c>(2x)</c>; null when the text is something else.</summary>
    public static int? TimesOf(string text)
    {
        var bare = text.Trim().Trim('(', ')').Replace(" ", "", StringComparison.Ordinal).ToLowerInvariant();
        if (!bare.StartsWith('x') && !bare.EndsWith('x'))
        {
            return null;
        }

        var digits = bare.StartsWith('x') ? bare[1..] : bare[..^1];
        return
            digits.Length is > 0 and < 6
            && int.TryParse(digits, NumberStyles.None, CultureInfo.InvariantCulture, out var times)
            ? times
            : null;
    }
}
