using System.Buffers.Binary;
using System.Collections.Immutable;
using System.Text;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Notation;

/// <summary>Turns what is played into the tracks of a file.</summary>
internal sealed class MidiScore
{
    private const byte Text = 0x01;
    private const byte Name = 0x03;
    private const byte TrackEnd = 0x2F;
    private const byte Tempo = 0x51;
    private const byte TimeSignature = 0x58;
    private const byte KeySignature = 0x59;
    private const int NoteOn = 0x90;
    private const int ProgramChange = 0xC0;
    private const int MostMicroseconds = 0xFF_FFFF;
    private readonly Line _line;
    private readonly MidiWriting _options;
    private readonly MidiResolution _resolution;

    public MidiScore(Realization realization, MidiWriting options)
    {
        _line = realization.Line;
        _options = options;
        if (_line.Notes[0].Onset < Fraction.Zero)
        {
            throw new ArgumentException("A note begins before the first bar line.", nameof(realization));
        }

        _resolution = MidiResolution.For(
            _line.Notes.SelectMany(note => new[] { Played(note.Onset), Played(note.End) })
        );
    }

    public byte[] ToBytes()
    {
        var first = new MidiTrackBytes();
        WriteFrame(first);
        var voices = _options.Voices.IsEmpty ? [Written()] : _options.Voices;
        if (_options.Format == MidiFormat.Single)
        {
            WriteNotes(first, voices);
            return MidiTrackBytes.File(0, _resolution.Division, first);
        }

        End(first, 0);
        return MidiTrackBytes.File(1, _resolution.Division, [first, .. voices.Select(Track)]);
    }

    private MidiTrackBytes Track(MidiVoice voice)
    {
        var track = new MidiTrackBytes();
        track.Meta(0, Name, Encoding.UTF8.GetBytes(voice.Name));
        WriteNotes(track, [voice]);
        return track;
    }

    // Swing is in the ticks, never in the tempo.
    private Fraction Played(Fraction written)
    {
        var rhythm = _line.Recipe.Rhythm;
        return rhythm.Swing.Apply(written, rhythm.Meter, rhythm.NotesPerBeat);
    }

    private void WriteFrame(MidiTrackBytes track)
    {
        var recipe = _line.Recipe;
        if ((recipe.Title ?? recipe.Id) is { } title)
        {
            track.Meta(0, Name, Encoding.UTF8.GetBytes(title));
        }

        if (_options.Remark)
        {
            var rhythm = recipe.Rhythm;
            var remark = new MidiRemark(rhythm.Swing, rhythm.NotesPerBeat, _resolution.IsExact);
            track.Meta(0, Text, Encoding.UTF8.GetBytes(remark.ToString()));
        }

        track.Meta(0, TimeSignature, SignatureOf(recipe.Rhythm.Meter));
        if (MidiKey.Of(recipe.Notes?.Transposed(recipe.Instrument.Capo)) is { } key)
        {
            track.Meta(0, KeySignature, [unchecked((byte)key.Sharps), key.IsMinor ? (byte)1 : (byte)0]);
        }

        foreach (var change in Tempi())
        {
            track.Meta(_resolution.TickOf(change.At), Tempo, Microseconds(change));
        }
    }

    private ImmutableArray<TempoChange> Tempi()
    {
        var rhythm = _line.Recipe.Rhythm;
        if (!_options.Tempi.IsEmpty)
        {
            return _options.Tempi;
        }

        return rhythm.TempoBpm is { } bpm && Passagework.Rhythm.Tempo.TryOf(Math.Max(1, bpm), out var tempo)
            ? [new TempoChange(Fraction.Zero, tempo, rhythm.Meter.Beat)]
            : [];
    }

    // A click each felt beat, 24 clocks being a quarter note.
    private static byte[] SignatureOf(Meter meter)
    {
        var clocks = (meter.Beat * Fraction.Of(96)).Floor();
        var power = System.Numerics.BitOperations.Log2((uint)meter.WrittenUnit);
        return [(byte)meter.WrittenBeats, (byte)power, (byte)clocks, 8];
    }

    private static byte[] Microseconds(TempoChange change)
    {
        var quarterBpm = change.Tempo.BeatsPerMinute * change.Beat.ToDouble() * 4;
        var number = new byte[4];
        var micro = Math.Clamp((int)Math.Round(60_000_000 / quarterBpm), 1, MostMicroseconds);
        BinaryPrimitives.WriteInt32BigEndian(number, micro);
        return number[1..];
    }

    // The notes of the line, for their written lengths.
    private MidiVoice Written()
    {
        var weights = new PulseWeights(_line.Recipe.Rhythm);
        var notes = ImmutableArray.CreateBuilder<MidiVoiceNote>();
        foreach (var note in _line.Notes)
        {
            var loud = AccentMap.Velocity(
                _options.Accents,
                weights.At(note.Onset),
                note.InGroup == 0,
                note.Accent
            );
            var (from, to) = (Played(note.Onset), Played(note.End));
            notes.AddRange(note.Tones.Select(tone => new MidiVoiceNote(from, to, tone.Midi, loud)));
        }

        return new MidiVoice(_options.TrackName, 1, _options.Program, notes.ToImmutable());
    }

    private void WriteNotes(MidiTrackBytes track, ImmutableArray<MidiVoice> voices)
    {
        foreach (var voice in voices.Where(voice => voice.Program is not null))
        {
            track.Channel(0, ProgramChange + voice.Channel - 1, (byte)(voice.Program!.Value - 1));
        }

        // At one tick notes end before others begin, unless they begin there themselves.
        var events = voices
            .SelectMany(voice => voice.Notes.SelectMany(note => Events(note, voice.Channel)))
            .OrderBy(e => e.Tick)
            .ThenBy(e => e.Order);
        var last = 0L;
        foreach (var (tick, _, status, key, velocity) in events)
        {
            track.Channel(tick, status, key, velocity);
            last = tick;
        }

        End(track, last);
    }

    private IEnumerable<(long Tick, int Order, int Status, byte Key, byte Velocity)> Events(
        MidiVoiceNote note,
        int channel
    )
    {
        var (from, to) = (_resolution.TickOf(note.At), _resolution.TickOf(note.End));
        var status = NoteOn + channel - 1;
        yield return (from, 1, status, (byte)note.Key, (byte)note.Velocity);
        yield return (to, to > from ? 0 : 2, status, (byte)note.Key, 0);
    }

    // The first track ends with the last of its events, the notes with the line.
    private void End(MidiTrackBytes track, long last) =>
        track.Meta(
            Math.Max(last, Math.Max(_resolution.TickOf(Played(_line.End)), LastTempo())),
            TrackEnd,
            []
        );

    private long LastTempo() => _options.Tempi.IsEmpty ? 0 : _resolution.TickOf(_options.Tempi[^1].At);
}
