using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;

namespace Passagework.Engraving.Setting;

/// <summary>Text broken into lines of a width.</summary>
/// <remarks>
/// A line takes as many words as fit. A word wider than a whole line is cut between letters. Where a most number of
/// lines is given, what does not fit is left out and the last line ends with three dots.
/// </remarks>
public sealed class TextBlock
{
    private const string Dots = "…";

    private readonly TextStyle _style;
    private readonly ImmutableArray<ImmutableArray<TextWord>> _lines;
    private readonly double _space;

    private TextBlock(TextStyle style, ImmutableArray<ImmutableArray<TextWord>> lines, bool isCut)
    {
        (_style, _lines, IsCut) = (style, lines, isCut);
        _space = TextFont.Width(" ", style.Face, style.SizeMm, style.TrackingEm);
        WidthMm = lines.IsEmpty ? 0 : lines.Max(Width);
    }

    /// <summary>Whether something was left out.</summary>
    public bool IsCut { get; }

    /// <summary>Number of lines; 0 for text without words.</summary>
    public int Lines => _lines.Length;

    /// <summary>Width of the widest line.</summary>
    public double WidthMm { get; }

    /// <summary>Leading of all lines together.</summary>
    public double HeightMm => _lines.Length * _style.LeadingMm;

    /// <summary>Sets text; the width is at least one letter's whatever was asked for.</summary>
    public static TextBlock Set(
        IEnumerable<Phrase> phrases,
        TextStyle style,
        double widthMm,
        int mostLines = int.MaxValue
    )
    {
        var space = TextFont.Width(" ", style.Face, style.SizeMm, style.TrackingEm);
        var lines = new List<ImmutableArray<TextWord>>();
        var line = ImmutableArray.CreateBuilder<TextWord>();
        var used = 0.0;
        foreach (var word in TextWord.Of(phrases, style).SelectMany(word => Fitting(word, widthMm, style)))
        {
            var width = word.WidthMm(style);
            if (line.Count > 0 && used + space + width > widthMm)
            {
                lines.Add(line.DrainToImmutable());
            }

            used = line.Count == 0 ? width : used + space + width;
            line.Add(word);
        }

        if (line.Count > 0)
        {
            lines.Add(line.DrainToImmutable());
        }

        return lines.Count <= mostLines
            ? new TextBlock(style, [.. lines], isCut: false)
            : Cut(style, lines, widthMm, mostLines);
    }

    /// <summary>One phrase, set.</summary>
    public static TextBlock Set(
        Phrase phrase,
        TextStyle style,
        double widthMm,
        int mostLines = int.MaxValue
    ) => Set([phrase], style, widthMm, mostLines);

    /// <summary>The marks, the block's upper left corner at a point.</summary>
    public IEnumerable<Mark> MarksAt(Point corner, string id, string kind) =>
        _lines.SelectMany((_, line) => LineAt(line, corner, id, kind));

    /// <summary>The marks with every line's right end at a point's x, its top at the point's y.</summary>
    public IEnumerable<Mark> MarksEndingAt(Point corner, string id, string kind) =>
        _lines.SelectMany((words, line) => LineAt(line, corner.Moved(-Width(words), 0), id, kind));

    /// <summary>The marks with every line's middle at a point's x, its top at the point's y.</summary>
    public IEnumerable<Mark> MarksAround(Point corner, string id, string kind) =>
        _lines.SelectMany((words, line) => LineAt(line, corner.Moved(-Width(words) / 2, 0), id, kind));

    private static IEnumerable<TextWord> Fitting(TextWord word, double widthMm, TextStyle style) =>
        word.WidthMm(style) <= widthMm ? [word] : word.CutTo(widthMm, style);

    private static TextBlock Cut(
        TextStyle style,
        List<ImmutableArray<TextWord>> lines,
        double widthMm,
        int mostLines
    )
    {
        var kept = lines.Take(mostLines).ToImmutableArray();
        if (kept.IsEmpty)
        {
            return new TextBlock(style, [], isCut: true);
        }

        var last = kept[^1];
        while (!last.IsEmpty)
        {
            var dotted = last.SetItem(last.Length - 1, WithDots(last[^1], style));
            var block = new TextBlock(style, kept.SetItem(kept.Length - 1, dotted), isCut: true);
            if (block.Width(dotted) <= widthMm)
            {
                return block;
            }

            last = Shorter(last);
        }

        return new TextBlock(style, kept.SetItem(kept.Length - 1, [WithDots(new TextWord([]), style)]), true);
    }

    // A line without its last word; a line of one word without its last letters.
    private static ImmutableArray<TextWord> Shorter(ImmutableArray<TextWord> line)
    {
        if (line.Length > 1)
        {
            return line[..^1];
        }

        return line[0].WithoutLastLetter() is { Runs.IsEmpty: false } rest ? [rest] : [];
    }

    private static TextWord WithDots(TextWord word, TextStyle style) =>
        word with
        {
            Runs = word.Runs.Add(new TextRun(Dots, 0, style.Face)),
        };

    private double Width(ImmutableArray<TextWord> words) =>
        words.Sum(word => word.WidthMm(_style)) + (_space * (words.Length - 1));

    private IEnumerable<Mark> LineAt(int number, Point corner, string id, string kind)
    {
        var at = corner.Moved(0, (number * _style.LeadingMm) + _style.BaselineMm);
        var part = 0;
        foreach (var run in Merged(_lines[number]))
        {
            yield return run.MarkAt(at, _style, $"{id}-{number}-{part}", kind);
            at = at.Moved(run.WidthMm(_style), 0);
            part++;
        }
    }

    // Neighbouring words in one face are one mark with their spaces, so that text can be searched and copied.
    private static List<TextRun> Merged(ImmutableArray<TextWord> words)
    {
        var runs = new List<TextRun>();
        foreach (var (word, number) in words.Select((word, number) => (word, number)))
        {
            foreach (var (run, place) in word.Runs.Select((run, place) => (run, place)))
            {
                if (number > 0 && place == 0)
                {
                    TextRun.Append(runs, new TextRun(" ", 0, runs[^1].Face));
                }

                TextRun.Append(runs, run);
            }
        }

        return runs;
    }
}
