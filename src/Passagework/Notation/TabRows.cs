using System.Collections.Immutable;
using System.Text;
using Passagework.Exercises;

namespace Passagework.Notation;

/// <summary>The rows of a piece, strings and what stands above and below them, and how they are drawn.</summary>
internal sealed class TabRows
{
    public const string Count = "Count";
    public const string Rhythm = "Rhythm";
    public const string Group = "Group";
    public const string Accent = "Accent";
    public const string Sound = "Sound";
    public const string Stroke = "Stroke";
    public const string Finger = "Finger";

    private readonly ImmutableArray<(string Label, Func<TabCell, string> Text)> _above;
    private readonly ImmutableArray<(string Label, Func<TabCell, string> Text)> _below;
    private readonly ImmutableArray<string> _strings;
    private readonly NoteSound _sound;

    private TabRows(ImmutableArray<ImmutableArray<TabCell>> bars, Recipe recipe)
    {
        var all = bars.SelectMany(bar => bar).ToList();
        (string Label, Func<TabCell, string> Text)[] above =
        [
            (Count, cell => cell.Count),
            (Rhythm, cell => cell.Rhythm),
            (Group, cell => cell.Group),
            (Accent, cell => cell.Accent),
            (Stroke, cell => cell.Stroke),
        ];
        _above = [.. above.Where(row => all.Exists(cell => row.Text(cell).Length > 0))];
        _below = all.Exists(cell => cell.Finger.Length > 0) ? [(Finger, cell => cell.Finger)] : [];
        _strings = TabTuning.Labels(recipe.Instrument.Tuning);
        _sound = recipe.Cell?.Sound ?? NoteSound.Normal;
        Strokes = [.. all.Select(cell => cell.Stroke).Where(sign => sign.Length > 0).Distinct()];
        HasFingers = !_below.IsEmpty;
        LabelWidth = Rhythm.Length;
    }

    /// <summary>Columns before the bar that begins each line.</summary>
    public int LabelWidth { get; }

    /// <summary>The stroke signs in use.</summary>
    public ImmutableArray<string> Strokes { get; }

    public bool HasFingers { get; }

    public static TabRows Of(ImmutableArray<ImmutableArray<TabCell>> bars, Recipe recipe) =>
        new(bars, recipe);

    public string Draw(ImmutableArray<ImmutableArray<TabStretch>> systems)
    {
        var page = new StringBuilder();
        foreach (var system in systems)
        {
            page.Append('\n');
            DrawRows(page, _above, system);
            DrawSound(page, system);
            for (var number = 1; number <= _strings.Length; number++)
            {
                page.Append(_strings[number - 1].PadLeft(LabelWidth)).Append('|');
                DrawString(page, system, number);
                page.Append('\n');
            }

            DrawRows(page, _below, system);
        }

        return page.ToString();
    }

    private void DrawRows(
        StringBuilder page,
        ImmutableArray<(string Label, Func<TabCell, string> Text)> rows,
        ImmutableArray<TabStretch> system
    )
    {
        foreach (var (label, text) in rows)
        {
            var row = new StringBuilder(label.PadRight(LabelWidth + 1));
            foreach (var (cell, column) in Columns(system).Where(placed => text(placed.Cell).Length > 0))
            {
                row.Append(' ', LabelWidth + 1 + column - row.Length).Append(text(cell));
            }

            AppendTrimmed(page, row);
        }
    }

    private void DrawSound(StringBuilder page, ImmutableArray<TabStretch> system)
    {
        if (_sound == NoteSound.Normal)
        {
            return;
        }

        var row = new StringBuilder(Sound.PadRight(LabelWidth + 1));
        var notes = Columns(system)
            .Where(placed => placed.Cell.String > 0)
            .Select(placed => placed.Column)
            .ToList();
        if (_sound == NoteSound.Staccato)
        {
            notes.ForEach(column => row.Append(' ', LabelWidth + 1 + column - row.Length).Append('.'));
        }
        else if (notes.Count > 0)
        {
            var sign = _sound == NoteSound.PalmMuted ? "PM" : "LR";
            var span = Math.Max(0, notes[^1] - notes[0] + 1 - sign.Length);
            row.Append(' ', notes[0]).Append(sign).Append('-', span);
        }

        AppendTrimmed(page, row);
    }

    private static void DrawString(StringBuilder page, ImmutableArray<TabStretch> system, int number)
    {
        foreach (var stretch in system)
        {
            var line = new char[stretch.Columns];
            Array.Fill(line, '-');
            foreach (var (cell, column) in stretch.Cells)
            {
                if (cell.FretOn(number) is not { } fret)
                {
                    continue;
                }

                fret.CopyTo(line.AsSpan(column));
                if (cell.Before is { } sign)
                {
                    line[column - 1] = sign;
                }

                if (cell.Event.Tied)
                {
                    line[column + fret.Length] = ')';
                }
            }

            if (stretch.Closed)
            {
                line[^1] = '|';
            }

            page.Append(line);
        }
    }

    // Cells of a system with their column counted from the first behind the label.
    private static IEnumerable<(TabCell Cell, int Column)> Columns(ImmutableArray<TabStretch> system)
    {
        var start = 0;
        foreach (var stretch in system)
        {
            foreach (var (cell, column) in stretch.Cells)
            {
                yield return (cell, start + column);
            }

            start += stretch.Columns;
        }
    }

    private static void AppendTrimmed(StringBuilder page, StringBuilder row) =>
        page.Append(row.ToString().TrimEnd()).Append('\n');
}
