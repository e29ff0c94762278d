using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Applies the rows beside a system to its events.</summary>
internal sealed class TabRowReader
{
    private readonly TabPage _page;
    private readonly TabReading _options;
    private readonly TabFindings _findings;

    // Groups go on from system to system.
    private int? _group;
    private int _nextGroup;

    public TabRowReader(TabPage page, TabReading options, TabFindings findings)
    {
        _page = page;
        _options = options;
        _findings = findings;
    }

    /// <summary>Reads all rows of a system; rests are added to the events, and a count below is returned.</summary>
    /// <param name="system">The rows.</param>
    /// <param name="start">Column of the text in which the bodies begin.</param>
    /// <param name="events">The events of the system, in order.</param>
    /// <returns>How often the system is played, when a row says so.</returns>
    public int? Apply(TabSystemText system, int start, List<TabReadEvent> events)
    {
        var target = new TabRowTarget(start, events, _findings);
        int? times = null;
        foreach (var line in system.Above)
        {
            Apply(line, isAbove: true, target);
        }

        foreach (var line in system.Below)
        {
            if (TabTail.TimesOf(line.Text) is { } count and >= 1 and <= 99)
            {
                times = count;
            }
            else
            {
                Apply(line, isAbove: false, target);
            }
        }

        NumberGroups(target);
        return times;
    }

    private void Apply(TabLine line, bool isAbove, TabRowTarget target)
    {
        var label = TabRowText.LabelOf(line.Text);
        var row = TabRowText.WithoutLabel(line.Text);
        target.HasGroups |= label == TabRows.Group;
        var known =
            string.IsNullOrWhiteSpace(row)
            || (MayBe(TabRows.Rhythm, label) && ApplyLengths(line, row, target))
            || (MayBe(TabRows.Accent, label) && ApplyAccents(line, row, target))
            || (MayBe(TabRows.Sound, label) && ApplySound(line, row))
            || (MayBe(TabRows.Stroke, label) && ApplyStrokes(line, row, target))
            || (label == TabRows.Group && ReadGroups(line, row, target))
            || (label is null && !isAbove && ApplyFingers(line, row, target))
            || (label == TabRows.Finger && ApplyFingers(line, row, target))
            || (MayBe(TabRows.Count, label) && ApplyCounts(row, target));
        if (!known)
        {
            TabPage.KeepText(line, _page.Header, _findings);
        }
    }

    private static bool MayBe(string wanted, string? label) => label is null || label == wanted;

    private static bool ApplyLengths(TabLine line, string row, TabRowTarget target)
    {
        if (TabRowText.Lengths(row) is not { } lengths)
        {
            return false;
        }

        var notes = lengths.Where(sign => !sign.Value.IsRest).ToList();
        var rests = lengths.Where(sign => sign.Value.IsRest).ToList();
        var missing = target.EventCount - notes.Count;
        if (missing != 0 || rests.Exists(rest => target.At(rest.Column) is not null))
        {
            target.Ignore(line, "has not one length for every note");
        }
        else if (target.Apply(line, notes, (note, sign) => note.Length = sign.Length))
        {
            rests.ForEach(rest => target.AddRest(line, rest.Column, rest.Value.Length));
        }

        return true;
    }

    private static bool ApplyCounts(string row, TabRowTarget target)
    {
        if (TabRowText.Counts(row) is not { } counts)
        {
            return false;
        }

        foreach (var count in counts)
        {
            if (target.At(count.Column) is { } note)
            {
                note.CountedAt = count.Value;
            }
        }

        return counts.Exists(count => target.At(count.Column) is not null);
    }

    private static bool ApplyAccents(TabLine line, string row, TabRowTarget target)
    {
        var accents = TabRowText.Accents(row);
        return accents is not null && (target.Apply(line, accents, (note, _) => note.Accent = true) || true);
    }

    private bool ApplyStrokes(TabLine line, string row, TabRowTarget target)
    {
        if (TabRowText.Strokes(row, _options.Carets) is not { } strokes)
        {
            return false;
        }

        if (strokes.Count == 0)
        {
            target.Ignore(line, "uses ^ and v, which mean different strokes to different writers");
        }

        target.Apply(line, strokes, (note, stroke) => note.Stroke = stroke);
        return true;
    }

    private static bool ApplyFingers(TabLine line, string row, TabRowTarget target)
    {
        var fingers = TabRowText.Fingers(row);
        return fingers is not null
            && (target.Apply(line, fingers, (note, finger) => note.Finger = finger) || true);
    }

    private bool ApplySound(TabLine line, string row)
    {
        if (TabRowText.Sound(row) is not { } sound)
        {
            return false;
        }

        var column = row.Length - row.TrimStart().Length;
        _findings.Keep(new TabMark(TabMarkKind.Sound, sound, line.Number, column + 1));
        return true;
    }

    private static bool ReadGroups(TabLine line, string row, TabRowTarget target)
    {
        if (TabRowText.Groups(row) is not { } groups)
        {
            return false;
        }

        target.Apply(line, groups, (note, group) => target.GroupSigns[note] = group);
        return true;
    }

    private void NumberGroups(TabRowTarget target)
    {
        if (!target.HasGroups)
        {
            return;
        }

        foreach (var note in target.Notes)
        {
            if (target.GroupSigns.TryGetValue(note, out var sign))
            {
                _group = sign is -1 ? _nextGroup : sign;
                _nextGroup = _group + 1 ?? _nextGroup;
            }

            note.Group = _group;
        }
    }
}
