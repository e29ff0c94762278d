using Passagework.Exercises;

namespace Passagework.Notation;

/// <summary>Puts the strings of a system together: one event at a time, each slur led back to the note before.</summary>
internal sealed class TabChords
{
    private readonly TabFindings _findings;
    private TabReadEvent? _before;

    public TabChords(TabFindings findings) => _findings = findings;

    /// <summary>The events of all strings in order of columns; of notes at the same time the top one is kept.</summary>
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
        if (notes.Count > 1)
        {
            _findings.Warn($"{notes.Count} notes at once; only the top one is read", top.Spot);
        }

        SettleSlur(top);
        if (top.Place is not null)
        {
            _before = top;
        }

        return top;
    }

    private void SettleSlur(TabReadEvent note)
    {
        if (note.SlurSign is not { } sign || note.Place is not { } place)
        {
            return;
        }

        var from =
            _before?.Place is { } before && before.String == place.String ? before : (Instrument.Place?)null;
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
