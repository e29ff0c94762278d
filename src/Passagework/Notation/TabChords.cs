using Passagework.Exercises;

namespace Passagework.Notation;

/// <summary>Puts the strings of a system together: one event at a time, each slur led back to the note before.</summary>
internal sealed class TabChords
{
    private readonly TabFindings _findings;
    private TabReadEvent? _before;

    public TabChords(TabFindings findings) => _findings = findings;

    /// <summary>The events of all strings in order of columns; notes at the same time are one, written at the top string.</summary>
    public List<TabReadEvent> Merge(IEnumerable<TabReadEvent> strings)
    {
        var merged = new List<TabReadEvent>();
        var chord = new List<TabReadEvent>();
        foreach (
            var next in strings
                .OrderBy(note => note.Column)
                .ThenBy(note => note.Place?.String ?? int.MaxValue)
        )
        {
            if (chord.Count > 0 && next.Column > chord.Max(note => note.End))
            {
                merged.Add(Top(chord));
                chord.Clear();
            }

            chord.Add(next);
        }

        if (chord.Count > 0)
        {
            merged.Add(Top(chord));
        }

        return merged;
    }

    private TabReadEvent Top(List<TabReadEvent> chord)
    {
        var notes = chord.Where(note => note.Place is not null).ToList();
        var top = notes.MinBy(note => note.Place!.Value.String) ?? chord[0]; // null places were left out
        var kept = notes.DistinctBy(note => note.Place!.Value.String).ToList();
        if (kept.Count < notes.Count)
        {
            _findings.Warn("notes crowd on one string; the first of them is read", top.Spot);
        }

        if (kept.Count > 1)
        {
            Gather(top, kept);
        }
        else
        {
            SettleSlur(top);
        }

        if (top.Place is not null)
        {
            _before = top;
        }

        return top;
    }

    // A chord is struck: what leads to it stays with the signs that are kept, and so do the signs of all its tones.
    private static void Gather(TabReadEvent top, List<TabReadEvent> notes)
    {
        top.With = [.. notes.Where(note => note != top).Select(note => note.Place!.Value)];
        foreach (var note in notes)
        {
            if (note != top)
            {
                foreach (var mark in note.Marks)
                {
                    top.Mark(mark.Kind, mark.Text, note.Spot);
                }
            }

            if (note.SlurSign is { } sign)
            {
                top.Mark(TabMarkKind.Unknown, sign.ToString(), note.Spot);
            }
        }
    }

    private void SettleSlur(TabReadEvent note)
    {
        if (note.SlurSign is not { } sign || note.Place is not { } place)
        {
            return;
        }

        var from = _before
            ?.With.Append(_before.Place ?? default)
            .Where(before => before.String == place.String)
            .Select(before => (Instrument.Place?)before)
            .FirstOrDefault();
        note.Slur = sign switch
        {
            'h' when from is not null || note.SlurIsClose => Slur.Hammer,
            'p' when from is not null || note.SlurIsClose => Slur.Pull,
            '^' when from is { } start => place.Fret > start.Fret ? Slur.Hammer : Slur.Pull,
            '/' or '\\' or 's' when from is not null => Slur.Slide,
            _ => Slur.None,
        };
        if (note.Slur == Slur.None)
        {
            var isSlide = sign is '/' or '\\' or 's';
            note.Mark(isSlide ? TabMarkKind.SlideIn : TabMarkKind.Unknown, sign.ToString(), note.Spot);
        }
    }
}
