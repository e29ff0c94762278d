using System.Collections.Immutable;
using System.Globalization;
using Passagework.Engraving.Setting;
using Passagework.Exercises;
using Passagework.Notation;

namespace Passagework.Engraving.Scores;

/// <summary>What is written at the notes besides pitch and time, looked up by note.</summary>
internal sealed class ScoreFacts
{
    private readonly ImmutableArray<PlayedNote> _notes;
    private readonly ImmutableArray<Slur> _slurs;
    private readonly ScoreOptions _options;
    private readonly bool _grouped;
    private readonly bool _accented;
    private readonly ImmutableArray<string?> _positions;
    private readonly Dictionary<int, ScoreBend> _bends;
    private readonly HashSet<int> _vibratos;

    public ScoreFacts(Realization realization, ScoreOptions options)
    {
        _notes = realization.Notes;
        _slurs = PlayedSlurs.Of(_notes);
        _options = options;
        // A line typed note by note without groups is counted by the beat, and groups of one note each are no groups.
        var written = realization.Line.Recipe.Written;
        _grouped =
            options.Groups
            && written?.Entries.Any(entry => entry.Group is not null) != false
            && HasGroups(_notes);
        _accented = _notes.Any(note => !note.Note.Accent);
        _positions = options.Positions ? Shifts(_notes) : [];
        FirstPosition = Enumerable
            .Range(0, _positions.Length)
            .Where(note => _positions[note] is not null)
            .Select(note => (int?)note)
            .FirstOrDefault();
        _bends = options.Bends.ToDictionary(bend => bend.Note);
        _vibratos = [.. options.Vibratos];
    }

    /// <summary>How the note is reached.</summary>
    public Slur Into(int note) => _slurs[note];

    /// <summary>The plectrum's stroke, if it is written.</summary>
    public Stroke Stroke(int note) => IsWritten(note) ? Plectrum(note) : Exercises.Stroke.None;

    /// <summary>The plucking fingers of a note or chord from low to high, if they are written.</summary>
    public ImmutableArray<Stroke> Plucks(int note)
    {
        if (_options.Strokes == ShownStrokes.None)
        {
            return [];
        }

        if (_notes[note].With.IsEmpty)
        {
            return _notes[note].Stroke > Exercises.Stroke.Up ? [_notes[note].Stroke] : [];
        }

        return
        [
            .. _notes[note]
                .Tones.Reverse()
                .Select(tone => tone.Stroke)
                .Where(stroke => stroke > Exercises.Stroke.Up)
                .Distinct(),
        ];
    }

    /// <summary>Whether a note has an accent; where all have one it tells nothing and is not written.</summary>
    public bool Accent(int note) => _accented && _notes[note].Note.Accent;

    /// <summary>The string, where it changes.</summary>
    public int? StringNumber(int note) =>
        _options.Strings && (note == 0 || _notes[note - 1].Place.String != _notes[note].Place.String)
            ? _notes[note].Place.String
            : null;

    /// <summary>The group of a note, if groups are written.</summary>
    public int? Group(int note) => _grouped ? _notes[note].Note.Group : null;

    /// <summary>The letter of the group that begins with the note: a to z, then aa, ab.</summary>
    public string? GroupLetter(int note) =>
        Group(note) is { } group && (note == 0 || Group(note - 1) != group) ? Letters(group) : null;

    /// <summary>The note at which the first position is told; null where none is.</summary>
    public int? FirstPosition { get; }

    /// <summary>The position, where it is new.</summary>
    public string? Position(int note) => _positions.IsEmpty ? null : _positions[note];

    /// <summary>The muted strings before the note, in the order in which the plectrum meets them.</summary>
    public ImmutableArray<int> Raked(int note)
    {
        var to = _notes[note].Place.String;
        if (_notes[note].RakedFrom is not { } from)
        {
            return [];
        }

        var step = Math.Sign(to - from);
        return [.. Enumerable.Range(0, Math.Abs(to - from)).Select(i => from + (i * step))];
    }

    /// <summary>The bend of the note.</summary>
    public ScoreBend? Bend(int note) => _bends.GetValueOrDefault(note);

    /// <summary>Whether the note is held with vibrato.</summary>
    public bool Vibrato(int note) => _vibratos.Contains(note);

    private static bool HasGroups(ImmutableArray<PlayedNote> notes)
    {
        for (var i = 1; i < notes.Length; i++)
        {
            if (notes[i].Note.Group is { } group && group == notes[i - 1].Note.Group)
            {
                return true;
            }
        }

        return false;
    }

    // First of all, at every change of string, and where a direction comes twice.
    private bool IsWritten(int note)
    {
        if (_options.Strokes != ShownStrokes.WhereNotObvious)
        {
            return _options.Strokes == ShownStrokes.All;
        }

        var before = note - 1;
        while (before >= 0 && Plectrum(before) == Exercises.Stroke.None)
        {
            before--;
        }

        return before < 0
            || _notes[before].Place.String != _notes[note].Place.String
            || Plectrum(before) == Plectrum(note);
    }

    // One stroke for all tones that the plectrum brushes.
    private Stroke Plectrum(int note)
    {
        var played = _notes[note];
        if (IsPlectrum(played.Stroke) || played.With.IsEmpty)
        {
            return IsPlectrum(played.Stroke) ? played.Stroke : Exercises.Stroke.None;
        }

        return played.With.Select(tone => tone.Stroke).FirstOrDefault(IsPlectrum);
    }

    private static bool IsPlectrum(Stroke stroke) => stroke is Exercises.Stroke.Down or Exercises.Stroke.Up;

    private static string Letters(int group)
    {
        const int Alphabet = 26;
        var letters = "";
        for (var rest = group + 1; rest > 0; rest = (rest - 1) / Alphabet)
        {
            letters =
                ((char)('a' + ((rest - 1) % Alphabet))).ToString(CultureInfo.InvariantCulture) + letters;
        }

        return letters;
    }

    // Open strings say nothing about where the hand is.
    private static ImmutableArray<string?> Shifts(ImmutableArray<PlayedNote> notes)
    {
        var shifts = ImmutableArray.CreateBuilder<string?>(notes.Length);
        var position = 0;
        foreach (var note in notes)
        {
            var shifted = note.Finger > 0 && note.Position != position;
            position = shifted ? note.Position : position;
            shifts.Add(shifted ? RomanNumerals.Of(position) : null);
        }

        return shifts.MoveToImmutable();
    }
}
