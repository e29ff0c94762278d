using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Notation;

/// <summary>Makes the recipe of a voice that was read.</summary>
internal sealed class MusicXmlAssembly
{
    private const int LongestTitle = 200;
    private readonly ReadScore _score;
    private readonly ReadPart _part;
    private readonly List<ReadNote> _notes;
    private readonly Fretboard _neck;
    private readonly ReadPlaces _places;
    private readonly ReadChord _chords;
    private readonly List<WrittenEntry> _entries = [];
    private readonly List<Lock> _locks = [];
    private Fraction _end;

    private MusicXmlAssembly(ReadScore score, Lane lane, List<ReadNote> notes, Fretboard neck, bool topOnly)
    {
        _score = score;
        _part = lane.Part;
        _notes = notes;
        _neck = neck;
        _places = new ReadPlaces(_part, neck);
        _chords = new ReadChord(_part, _places, neck, topOnly);
    }

    /// <summary>The recipe; refused where a note has no place on the neck.</summary>
    public static Outcome<Recipe> Build(
        ReadScore score,
        Lane lane,
        List<ReadNote> notes,
        MusicXmlReading options
    )
    {
        if (notes.Count > LengthRules.MostNotes)
        {
            return new Fault($"a voice of {notes.Count} notes", Right: "at most 20,000");
        }

        var neck = ReadInstrument.Of(
            score,
            lane,
            [.. notes.SelectMany(note => note.Tones)],
            options.Instrument
        );
        return InstrumentRules.Check(neck) is { } fault
            ? fault
            : new MusicXmlAssembly(score, lane, notes, neck, options.TopNotesOnly).Build();
    }

    private Outcome<Recipe> Build()
    {
        var start = _notes[0].Onset < (_part.Meter ?? default).Bar ? _notes[0].Onset : Fraction.Zero;
        var groups = new ReadGroups(_notes, _part.Remarks).Numbers();
        _end = start;
        for (var index = 0; index < _notes.Count; index++)
        {
            if (Add(index, groups[index]) is { } fault)
            {
                return fault;
            }
        }

        var recipe = new Recipe
        {
            Title = Title(),
            Notes = Scale(),
            Instrument = _neck,
            Rhythm = new ReadRhythm(_score, _part).Of(_entries, start),
            Picking = WrittenGuess.Picking(_locks),
            Fretting = new FrettingPlan { Locks = [.. _locks] },
            Written = new WrittenLine([.. _entries]),
        };
        return RecipeRules.Check(recipe) is { } broken ? broken : recipe;
    }

    private Fault? Add(int index, int? group)
    {
        var note = _notes[index];
        if (!_places.Of(note).TryGet(out var top, out var fault))
        {
            return fault;
        }

        var chord = _chords.Of(note, top);
        var found = chord[0];
        if (note.Onset > _end)
        {
            _entries.Add(new WrittenEntry { Duration = note.Onset - _end });
        }

        _end = note.End;
        _entries.Add(
            new WrittenEntry
            {
                Place = found.Place,
                Pitch = found.Place is null ? note.Pitch : null,
                With =
                [
                    .. chord
                        .Skip(1)
                        .Select(tone => new WrittenTone(
                            tone.Place,
                            tone.Place is null ? tone.Note.Pitch : null
                        )),
                ],
                Duration = note.Length,
                Group = group,
                Accent = note.Signs.Accent,
                Slur = chord.Length > 1 ? Slur.None : SlurInto(index),
            }
        );
        AddLock(index, found.Place, found.String);
        return null;
    }

    // A stop tells how the note is reached; some files write only the start, on the note before.
    private Slur SlurInto(int index)
    {
        if (index == 0)
        {
            return Slur.None;
        }

        var before = _notes[index - 1];
        var into = _notes[index].Signs.Into;
        if (before.Signs.Curve && into == Slur.None && before.Signs.OutOf == Slur.None)
        {
            Remark(before, "slur read as a phrase and left out");
        }

        return into == Slur.None ? before.Signs.OutOf : into;
    }

    private void AddLock(int index, Place? at, int? onString)
    {
        var signs = _notes[index].Signs;
        var finger = signs.Finger;
        if (at is { } place && finger is not null && place.IsOpen != (finger == 0))
        {
            Remark(_notes[index], "finger that does not fit the fret left out");
            finger = null;
        }

        var held = new Lock(index, Finger: finger, String: onString, Stroke: signs.Stroke);
        if (held != new Lock(index))
        {
            _locks.Add(held);
        }
    }

    private string? Title()
    {
        var title = new string([.. (_score.Title ?? "").Where(letter => !char.IsControl(letter))]).Trim();
        title = title.Length <= LongestTitle ? title : title[..LongestTitle];
        return title.Length == 0 ? null : title;
    }

    // As if the capo were the nut.
    private NoteSet? Scale() =>
        _score.Facts.TryGetValue(ScoreHeaderXml.NotesField, out var text) && ScaleOf(text) is { } told
            ? told
            : _part.Key?.Notes()?.Transposed(-_neck.Capo);

    private static NoteSet? ScaleOf(string text)
    {
        var space = text.IndexOf(' ', StringComparison.Ordinal);
        if (space < 0 || !NoteName.TryParse(text[..space], out var root))
        {
            return null;
        }

        var scale = text[(space + 1)..];
        if (NoteSet.TryNamed(root, scale, out var named))
        {
            return named;
        }

        var steps = scale.Split(' ').Select(step => ReadNumbers.Whole(step) ?? -1).ToImmutableArray();
        var ascending = steps.Zip(steps.Skip(1)).All(pair => pair.First < pair.Second);
        return steps[0] == 0 && steps[^1] <= 11 && ascending ? NoteSet.Listed(root, steps) : null;
    }

    private void Remark(ReadNote note, string text) =>
        _part.Remarks.Add(text, _part.SpotAt(note.Bar, note.InBar));
}
