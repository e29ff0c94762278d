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
        if (_options.Format == MidiFormat.Single)
        {
            WriteNotes(first);
            return MidiTrackBytes.File(0, _resolution.Division, first);
        }

        End(first);
        var second = new MidiTrackBytes();
        second.Meta(0, Name, Encoding.UTF8.GetBytes(_options.TrackName));
        WriteNotes(second);
        return MidiTrackBytes.File(1, _resolution.Division, first, second);
    }

    // Swing is in the ticks, never in the tempo.
    private Fraction Played(Fraction written)
    {
        var rhythm = _line.Recipe.Rhythm;
        return rhythm.Swing.Apply(written, rhythm.Meter, rhythm.NotesPerBeat);
    }

    private long TickOf(Fraction written) => _resolution.TickOf(Played(written));

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

    private void WriteNotes(MidiTrackBytes track)
    {
        track.Channel(0, ProgramChange, (byte)(_options.Program - 1));
        var weights = new PulseWeights(_line.Recipe.Rhythm);
        foreach (var note in _line.Notes)
        {
            var loud = AccentMap.Velocity(
                _options.Accents,
                weights.At(note.Onset),
                note.InGroup == 0,
                note.Accent
            );
            foreach (var tone in note.Tones)
            {
                track.Channel(TickOf(note.Onset), NoteOn, (byte)tone.Midi, (byte)loud);
            }

            foreach (var tone in note.Tones)
            {
                track.Channel(TickOf(note.End), NoteOn, (byte)tone.Midi, 0);
            }
        }

        End(track);
    }

    // The first track ends with the last of its events, the notes with the line.
    private void End(MidiTrackBytes track) =>
        track.Meta(Math.Max(TickOf(_line.End), LastTempo()), TrackEnd, []);

    private long LastTempo() => _options.Tempi.IsEmpty ? 0 : _resolution.TickOf(_options.Tempi[^1].At);
}
