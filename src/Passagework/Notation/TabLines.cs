using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>One line of the text, counted from 1, with tab stops turned into spaces.</summary>
internal sealed record TabLine(int Number, string Text)
{
    public TabSpot At(int index) => new(Number, index + 1);
}

/// <summary>Cuts a text into lines and refuses what is no text.</summary>
internal static class TabLines
{
    private const int TabStop = 8;

    public static Outcome<ImmutableArray<TabLine>> Of(string text)
    {
        var lines = ImmutableArray.CreateBuilder<TabLine>();
        foreach (var raw in text.TrimStart('\uFEFF').Split('\n'))
        {
            var line = raw.TrimEnd('\r');
            var number = lines.Count + 1;
            for (var i = 0; i < line.Length; i++)
            {
                if (IsUnreadable(line, i))
                {
                    var code = ((int)line[i]).ToString("X4", CultureInfo.InvariantCulture);
                    return new Fault(
                        $"unreadable character U+{code}",
                        new TabSpot(number, i + 1).ToString(),
                        "plain text in UTF-8"
                    );
                }
            }

            lines.Add(new TabLine(number, ExpandTabs(line)));
        }

        return lines.ToImmutable();
    }

    // U+FFFD is what a decoder leaves where the bytes were no text; half a surrogate pair is no character.
    private static bool IsUnreadable(string line, int at)
    {
        var c = line[at];
        if (char.IsSurrogate(c))
        {
            var first = char.IsHighSurrogate(c) ? at : at - 1;
            return first < 0
                || first + 1 == line.Length
                || !char.IsSurrogatePair(line[first], line[first + 1]);
        }

        return (char.IsControl(c) && c is not ('\t' or '\r' or '\f')) || c is '\uFFFD' or '\uFFFF';
    }

    private static string ExpandTabs(string line)
    {
        if (!line.Contains('\t', StringComparison.Ordinal))
        {
            return line;
        }

        var wide = new StringBuilder();
        foreach (var c in line)
        {
            if (c == '\t')
            {
                wide.Append(' ', TabStop - (wide.Length % TabStop));
            }
            else
            {
                wide.Append(c);
            }
        }

        return wide.ToString();
    }
}
