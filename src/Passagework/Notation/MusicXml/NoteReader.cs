using System.Globalization;
using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Notation;

/// <summary>Reads one note.</summary>
internal sealed class NoteReader(XmlWalk walk, ReadPart part)
{
    private const int LongestVoice = 20;
    private bool _chord;
    private bool _grace;
    private bool _cue;
    private bool _rest;
    private bool _unpitched;
    private SpelledPitch? _pitch;
    private string _voice = "1";
    private int _staff = 1;
    private Fraction _length;
    private NoteSigns _signs;

    public Fault? Read()
    {
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            if (ReadElement(name) is { } fault)
            {
                return fault;
            }
        }

        return Add();
    }

    private Fault? ReadElement(string name)
    {
        switch (name)
        {
            case "chord":
                _chord = true;
                break;
            case "grace":
                _grace = true;
                break;
            case "cue":
                _cue = true;
                break;
            case "rest":
                _rest = true;
                break;
            case "unpitched":
                _unpitched = true;
                break;
            case "pitch":
                return ReadPitch();
            case "duration":
                return ReadLength.Of(walk.Text(), part).TryGet(out _length, out var fault) ? null : fault;
            case "voice":
                _voice = VoiceOf(walk.Text());
                break;
            case "staff":
                _staff = Math.Clamp(ReadNumbers.Whole(walk.Text()) ?? 1, 1, ReadPart.MostStaves);
                break;
            default:
                ReadSign(name);
                break;
        }

        return null;
    }

    private void ReadSign(string name)
    {
        switch (name)
        {
            case "tie":
                Tie(walk.Attribute("type"));
                break;
            case "notations":
                _signs = new NotationsReader(walk, part, _signs).Read();
                break;
            case "notehead" when walk.Text() == "x":
                part.Remark("dead note, read as an ordinary one");
                break;
            case "lyric":
                part.Remark("lyrics left out");
                break;
            case "play":
                part.Remark("way of sounding (mute) left out");
                break;
        }
    }

    private void Tie(string type) =>
        _signs = _signs with
        {
            TiedBack = _signs.TiedBack || type == "stop",
            TiedOn = _signs.TiedOn || type == "start",
        };

    private static string VoiceOf(string text)
    {
        var cut = text.Length <= LongestVoice ? text : text[..LongestVoice];
        return cut.Length == 0 ? "1" : new string([.. cut.Where(letter => !char.IsControl(letter))]);
    }

    private Fault? ReadPitch()
    {
        var spot = walk.Spot;
        var letter = -1;
        decimal? alter = 0;
        int? octave = null;
        for (var depth = walk.Enter(); walk.Next(depth, out var name); )
        {
            switch (name)
            {
                case "step":
                    letter = ScorePitch.LetterOf(walk.Text());
                    break;
                case "alter":
                    alter = ReadNumbers.Any(walk.Text());
                    break;
                case "octave":
                    octave = ReadNumbers.Whole(walk.Text());
                    break;
            }
        }

        if (letter < 0 || octave is not (>= 0 and <= 9) || alter is not (>= -3 and <= 3))
        {
            return new Fault(
                "a pitch that is none",
                $"{part.Spot} ({spot})",
                "step A to G, alter -3 to 3, octave 0 to 9"
            );
        }

        var whole = (int)decimal.Truncate(alter.Value);
        if (whole != alter)
        {
            part.Remark("part of a semitone left out");
        }

        _pitch = new SpelledPitch(NoteName.Of(letter, whole), octave.Value);
        return null;
    }

    private Fault? Add()
    {
        if (_grace || _cue)
        {
            part.Remark(_grace ? "grace note left out" : "cue note left out");
            return _grace ? null : Advance();
        }

        var onset = _chord ? part.ChordOnset : part.Cursor;
        part.ChordOnset = onset;
        if (_unpitched)
        {
            part.Unpitched++;
        }
        else if (_pitch is { } pitch && !_rest)
        {
            AddPitched(pitch, onset);
        }

        return _chord ? null : Advance();
    }

    private void AddPitched(SpelledPitch written, Fraction onset)
    {
        if (_length == Fraction.Zero)
        {
            part.Remark("note without duration left out");
            return;
        }

        part.InScore.Notes++;
        part.Notes.Add(
            new ReadNote
            {
                Bar = part.Bars.Count - 1,
                InBar = onset,
                Length = _length,
                Voice = _voice,
                Staff = _staff,
                Pitch = Sounding(written, part.Staff(_staff).Transposition),
                Group = part.Group,
                Signs = _signs,
            }
        );
    }

    private Fault? Advance() => BarReader.MoveTo(part, part.Cursor + _length);

    /// <summary>What sounds; a name that would need over three signs becomes its plain neighbour.</summary>
    private static SpelledPitch Sounding(SpelledPitch written, Interval up)
    {
        if (up == default)
        {
            return written;
        }

        var midi = written.Midi + up.Semitones;
        var letter = written.Name.Letter + up.Letters;
        var octave = (letter - WholeNumbers.Modulo(letter, 7)) / 7;
        var natural = new SpelledPitch(NoteName.Of(letter - (7 * octave), 0), written.Octave + octave);
        var alteration = midi - natural.Midi;
        return Math.Abs(alteration) <= 3
            ? natural with
            {
                Name = NoteName.Of(natural.Name.Letter, alteration),
            }
            : Speller.Spell(null, [midi])[0];
    }
}
