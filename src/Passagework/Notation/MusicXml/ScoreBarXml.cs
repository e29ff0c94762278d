using System.Collections.Immutable;
using System.Globalization;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Notation;

/// <summary>The notes of one bar on one staff.</summary>
internal sealed class ScoreBarXml(
    XmlPage page,
    ImmutableArray<ScoreNote> bar,
    long divisions,
    NoteMarks marks
)
{
    private static readonly ImmutableArray<string> Accidentals =
    [
        "triple-flat",
        "flat-flat",
        "flat",
        "natural",
        "sharp",
        "double-sharp",
        "triple-sharp",
    ];

    /// <summary>Writes them.</summary>
    /// <param name="staff">What the staff shows.</param>
    /// <param name="key">The signature that accidentals go by; null where none are printed.</param>
    public void Write(StaffKind staff, ScoreKey? key)
    {
        var beams = staff.Stems ? BeamMarks.Of(bar) : [];
        var signs = key is null ? null : new HeldSigns(key);
        for (var at = 0; at < bar.Length; at++)
        {
            var note = bar[at];
            if (staff.Fingers)
            {
                WriteChords(note);
            }

            if (note is { Note: { } begun, TiedBack: false } && staff.Fingers)
            {
                WriteGroupStart(begun);
                WriteMuteStart(begun);
            }

            WriteNote(note, staff, signs, staff.Stems ? beams[at] : [], TupletEdges(at));
            foreach (var tone in note.Note?.With ?? [])
            {
                WriteNote(note with { Note = NoteMarks.Alone(note.Note!, tone) }, staff, signs, [], null);
            }

            if (note is { Note: { } ended, TiedOn: false } && staff.Fingers)
            {
                WriteGroupStop(ended);
                WriteMuteStop(ended);
            }
        }
    }

    private void WriteChords(ScoreNote note)
    {
        foreach (var (chord, after) in marks.Chords(note))
        {
            HarmonyXml.Write(page, chord, (after * Fraction.Of(4 * divisions)).Floor());
        }
    }

    // A further tone of a chord is a note of its own that shares beam and tuplet with the first.
    private void WriteNote(
        ScoreNote note,
        StaffKind staff,
        HeldSigns? signs,
        ImmutableArray<BeamMark> beams,
        (bool Start, bool Stop)? tuplet
    )
    {
        page.Open("note");
        if (tuplet is null)
        {
            page.Mark("chord");
        }

        WriteSound(note);
        page.Text("voice", staff.Voice);
        WriteValue(note);
        WriteAccidental(note, signs);
        WriteTupletRatio(note.Tuplet);
        WriteStaff(note, staff);
        WriteBeams(beams);
        new NotationsXml(page, note, marks, staff).Write(tuplet ?? default);
        WriteMute(note);
        page.Close();
    }

    private void WriteStaff(ScoreNote note, StaffKind staff)
    {
        if (note.Note is not null && !staff.Stems)
        {
            page.Text("stem", "none");
        }

        if (staff.Number is { } number)
        {
            page.Number("staff", number);
        }
    }

    private void WriteMute(ScoreNote note)
    {
        if (note.Note is not null && marks.Sound == NoteSound.PalmMuted)
        {
            page.Open("play");
            page.Text("mute", "palm");
            page.Close();
        }
    }

    private void WriteSound(ScoreNote note)
    {
        if (note.Note is { Note.Pitch: var pitch })
        {
            page.Open("pitch");
            page.Text("step", ScorePitch.Step(pitch));
            if (pitch.Name.Alteration != 0)
            {
                page.Number("alter", pitch.Name.Alteration);
            }

            page.Number("octave", pitch.Octave);
            page.Close();
        }
        else
        {
            page.Mark("rest", "measure", note.WholeBar ? "yes" : "");
        }

        page.Number("duration", (note.Length * Fraction.Of(4 * divisions)).Floor());
        if (note.TiedBack)
        {
            page.Mark("tie", "type", "stop");
        }

        if (note.TiedOn)
        {
            page.Mark("tie", "type", "start");
        }
    }

    private void WriteValue(ScoreNote note)
    {
        if (note.WholeBar)
        {
            return;
        }

        page.Text("type", note.Value.Name);
        for (var dot = 0; dot < note.Value.Dots; dot++)
        {
            page.Mark("dot");
        }
    }

    private void WriteAccidental(ScoreNote note, HeldSigns? signs)
    {
        if (signs is not null && note is { Note.Note.Pitch: var pitch, TiedBack: false } && signs.Sign(pitch))
        {
            page.Text("accidental", Accidentals[pitch.Name.Alteration + 3]);
        }
    }

    private void WriteTupletRatio(ScoreSpan? tuplet)
    {
        if (tuplet is null)
        {
            return;
        }

        page.Open("time-modification");
        page.Number("actual-notes", tuplet.Actual);
        page.Number("normal-notes", tuplet.Normal);
        page.Text("normal-type", NoteValue.UpTo(tuplet.Unit, mostDots: 0).First().Name);
        page.Close();
    }

    private void WriteBeams(ImmutableArray<BeamMark> beams)
    {
        for (var level = 0; level < beams.Length; level++)
        {
            page.Text(
                "beam",
                Word(beams[level]),
                "number",
                (level + 1).ToString(CultureInfo.InvariantCulture)
            );
        }
    }

    private static string Word(BeamMark mark) =>
        mark switch
        {
            BeamMark.Begin => "begin",
            BeamMark.Continue => "continue",
            BeamMark.End => "end",
            BeamMark.ForwardHook => "forward hook",
            _ => "backward hook",
        };

    private (bool Start, bool Stop) TupletEdges(int at)
    {
        var tuplet = bar[at].Tuplet;
        return tuplet is null
            ? (false, false)
            : (at == 0 || bar[at - 1].Tuplet != tuplet, at == bar.Length - 1 || bar[at + 1].Tuplet != tuplet);
    }

    // Groups are told as musical analysis, which is not printed; beams go by the beat.
    private void WriteGroupStart(PlayedNote note)
    {
        if (marks.GroupStart(note) is { } group)
        {
            page.Open("grouping", "type", "start", "number", "1", "member-of", GroupWords.MemberOf);
            page.Text("feature", group.ToString(CultureInfo.InvariantCulture), "type", GroupWords.Feature);
            page.Close();
        }
    }

    private void WriteGroupStop(PlayedNote note)
    {
        if (marks.EndsGroup(note))
        {
            page.Mark("grouping", "type", "stop", "number", "1", "member-of", GroupWords.MemberOf);
        }
    }

    private void WriteMuteStart(PlayedNote note)
    {
        if (NoteMarks.IsFirst(note) && marks.Sound is NoteSound.PalmMuted or NoteSound.LetRing)
        {
            page.Open("direction", "placement", "below");
            page.Open("direction-type");
            page.Text("words", marks.Sound == NoteSound.PalmMuted ? "P.M." : "let ring");
            page.Close();
            page.Open("direction-type");
            page.Mark("dashes", "type", "start", "number", "1");
            page.Close();
            page.Close();
        }
    }

    private void WriteMuteStop(PlayedNote note)
    {
        if (marks.IsLast(note) && marks.Sound is NoteSound.PalmMuted or NoteSound.LetRing)
        {
            page.Open("direction", "placement", "below");
            page.Open("direction-type");
            page.Mark("dashes", "type", "stop", "number", "1");
            page.Close();
            page.Close();
        }
    }
}
