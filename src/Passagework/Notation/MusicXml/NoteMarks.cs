using System.Collections.Immutable;
using System.Globalization;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Notation;

/// <summary>What is written at the notes besides pitch and time, looked up by note.</summary>
internal sealed class NoteMarks
{
    private readonly ImmutableArray<PlayedNote> _notes;
    private readonly ImmutableArray<Slur> _slurs;
    private readonly MusicXmlWriting _options;

    public NoteMarks(Realization realization, MusicXmlWriting options)
    {
        _notes = realization.Notes;
        _slurs = PlayedSlurs.Of(_notes);
        _options = options;
        Sound = realization.Line.Recipe.Cell?.Sound ?? NoteSound.Normal;
    }

    /// <summary>The chord symbols that begin under a note or rest, each with how long after its beginning.</summary>
    public IEnumerable<(Chord Chord, Fraction After)> Chords(ScoreNote note) =>
        _options
            .Chords.Where(chord => chord.Onset >= note.Onset && chord.Onset < note.Onset + note.Length)
            .Select(chord => (chord.Chord, chord.Onset - note.Onset));

    /// <summary>The bends of a note; a further tone of a chord has none.</summary>
    public IEnumerable<ScoreBend> Bends(PlayedNote note) =>
        note.Place == _notes[note.Note.Index].Place
            ? _options.Bends.Where(bend => bend.Note == note.Note.Index)
            : [];

    /// <summary>How all notes are to sound.</summary>
    public NoteSound Sound { get; }

    public static bool IsFirst(PlayedNote note) => note.Note.Index == 0;

    public bool IsLast(PlayedNote note) => note.Note.Index == _notes.Length - 1;

    /// <summary>How the note is reached.</summary>
    public Slur Into(PlayedNote note) => _slurs[note.Note.Index];

    /// <summary>How the note after it is reached.</summary>
    public Slur OutOf(PlayedNote note) =>
        IsLast(note) || !LeadsOn(note) ? Slur.None : _slurs[note.Note.Index + 1];

    /// <summary>A further tone of a chord as a note of its own; what is said once for a chord stays with its first.</summary>
    public static PlayedNote Alone(PlayedNote chord, PlayedTone tone)
    {
        var (note, stroke) = (chord.Note, tone.Stroke);
        var brushed = stroke is Exercises.Stroke.Down or Exercises.Stroke.Up;
        return new PlayedNote(
            note with
            {
                Pitch = tone.Tone.Pitch,
                Midi = tone.Tone.Midi,
                Place = tone.Place,
                Accent = false,
                With = [],
            },
            tone.Place,
            tone.Finger,
            chord.Position,
            brushed && stroke == chord.Stroke ? Exercises.Stroke.None : stroke
        );
    }

    // Of a chord the tone on the next note's string leads on, the first where none lies there.
    private bool LeadsOn(PlayedNote note)
    {
        var whole = _notes[note.Note.Index];
        var next = _notes[note.Note.Index + 1].Place.String;
        var leads = whole.Tones.Select(tone => tone.Place.String).Contains(next) ? next : whole.Place.String;
        return note.Place.String == leads;
    }

    /// <summary>The fretting finger; null when none is written.</summary>
    public string? Finger(PlayedNote note) =>
        _options.Fingers ? note.Finger.ToString(CultureInfo.InvariantCulture) : null;

    /// <summary>The element of the stroke and its text; null when none is written.</summary>
    public (string Element, string Text)? Stroke(PlayedNote note) =>
        !_options.Strokes
            ? null
            : note.Stroke switch
            {
                Exercises.Stroke.Down => ("down-bow", ""),
                Exercises.Stroke.Up => ("up-bow", ""),
                Exercises.Stroke.Thumb => ("pluck", "p"),
                Exercises.Stroke.Index => ("pluck", "i"),
                Exercises.Stroke.Middle => ("pluck", "m"),
                Exercises.Stroke.Ring => ("pluck", "a"),
                _ => null,
            };

    /// <summary>The group that begins with the note; null when none does.</summary>
    public int? GroupStart(PlayedNote note) =>
        _options.Groups && note.Note.Group is { } group && GroupAt(note.Note.Index - 1) != group
            ? group
            : null;

    /// <summary>Whether its group ends with the note.</summary>
    public bool EndsGroup(PlayedNote note) =>
        _options.Groups && note.Note.Group is { } group && GroupAt(note.Note.Index + 1) != group;

    private int? GroupAt(int index) => index < 0 || index >= _notes.Length ? null : _notes[index].Note.Group;
}
