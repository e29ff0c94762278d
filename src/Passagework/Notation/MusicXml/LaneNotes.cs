using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>One note after the other: a voice in the order played, tied notes joined, what begins together gathered under its top note.</summary>
internal sealed class LaneNotes
{
    private readonly Lane _lane;
    private readonly ReadPart _part;
    private readonly List<ReadNote> _notes = [];

    private Fraction _lastOnset;

    // Whether the note before is tied on.
    private bool _tiedOn;

    private LaneNotes(Lane lane)
    {
        _lane = lane;
        _part = lane.Part;
    }

    public static Outcome<List<ReadNote>> Of(Lane lane, bool unrollRepeats)
    {
        var bars = lane.Part.Bars;
        if (!unrollRepeats)
        {
            RemarkRepeats(lane.Part);
        }

        var order = unrollRepeats ? RepeatOrder.AsPlayed(bars) : RepeatOrder.AsWritten(bars);
        return order.Then<List<ReadNote>>(played => new LaneNotes(lane).Collect(played));
    }

    private static void RemarkRepeats(ReadPart part)
    {
        for (var bar = 0; bar < part.Bars.Count; bar++)
        {
            if (part.Bars[bar] is { RepeatTimes: > 0 } or { Ending.Count: > 0 })
            {
                part.Remarks.Add("repeat or ending not played", part.SpotAt(bar, Fraction.Zero));
            }
        }
    }

    private List<ReadNote> Collect(ImmutableArray<int> order)
    {
        var byBar = Told().ToLookup(note => note.Bar);
        var start = Fraction.Zero;
        // A first bar that is short is a pick-up: it ends with its bar line.
        var meter = (_part.Meter ?? default).Bar;
        var first = _part.Bars[order[0]].Length;
        if (order.Length > 1 && first < meter)
        {
            start = meter - first;
        }

        foreach (var bar in order)
        {
            foreach (
                var note in byBar[bar].OrderBy(note => note.InBar).ThenByDescending(note => note.Pitch.Midi)
            )
            {
                Add(note.At(start + note.InBar));
            }

            start += _part.Bars[bar].Length;
        }

        return _notes;
    }

    // The notes of the voice, with what the tab staff says about the same notes.
    private IEnumerable<ReadNote> Told()
    {
        var notes = _part.Notes.Where(_lane.Has);
        if (_lane.IsTab || !_part.Staves.Values.Any(staff => staff.IsTab))
        {
            return notes;
        }

        // Unisons stand on the tab as often as on the staff.
        var told = _part
            .Notes.Where(note => _part.Staff(note.Staff).IsTab)
            .GroupBy(note => (note.Bar, note.InBar, note.Pitch.Midi))
            .ToDictionary(
                group => group.Key,
                group => new Queue<NoteSigns>(group.Select(note => note.Signs))
            );
        return notes.Select(note =>
            told.TryGetValue((note.Bar, note.InBar, note.Pitch.Midi), out var signs)
            && signs.TryDequeue(out var first)
                ? note.With(note.Signs.Or(first))
                : note
        );
    }

    private void Add(ReadNote note)
    {
        var before = _notes.Count > 0 ? _notes[^1] : null;
        if (before is not null && note.Onset == _lastOnset)
        {
            AddTone(before, note);
            return;
        }

        _lastOnset = note.Onset;
        if (before is not null && HoldsOn(before, note))
        {
            before.Length = note.End - before.Onset;
            before.Signs = before.Signs with { OutOf = note.Signs.OutOf };
            _tiedOn = note.Signs.TiedOn;
            return;
        }

        if (before is not null && before.End > note.Onset)
        {
            Remark("note cut short where the next begins", note);
            before.Length = note.Onset - before.Onset;
        }

        _tiedOn = note.Signs.TiedOn;
        _notes.Add(note);
    }

    private void AddTone(ReadNote before, ReadNote note)
    {
        var held = before.Onset != note.Onset;
        if (!held)
        {
            before.Chord.Add(note);
        }
        else if (!before.Chord.Exists(tone => tone.Pitch.Midi == note.Pitch.Midi))
        {
            Remark("note that begins under a held one left out", note);
        }
    }

    private void Remark(string text, ReadNote note) =>
        _part.Remarks.Add(text, _part.SpotAt(note.Bar, note.InBar));

    private bool HoldsOn(ReadNote before, ReadNote note) =>
        _tiedOn && note.Signs.TiedBack && before.Pitch.Midi == note.Pitch.Midi && before.End >= note.Onset;
}
