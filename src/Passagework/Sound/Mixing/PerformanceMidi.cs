using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Notation;
using Passagework.Sound.Backing;
using Passagework.Sound.Click;
using Passagework.Sound.Performance;

namespace Passagework.Sound.Mixing;

/// <summary>A performance and what sounds with it as a Standard MIDI File: the same events as its sound.</summary>
/// <remarks>Programs and drum keys are those of General MIDI, level 1 (MIDI Manufacturers Association; from memory).</remarks>
public static class PerformanceMidi
{
    private const int DrumChannel = 10;
    private const int BassProgram = 33;
    private const int ChordProgram = 5;
    private const int DroneProgram = 21;
    private const int DroneVelocity = 60;
    private const int MostVelocity = 127;

    /// <summary>The clicks by their weight: high and low wood block, claves for the groups.</summary>
    private static readonly ImmutableArray<(int Key, int Velocity)> Clicks =
    [
        (76, 114),
        (76, 95),
        (77, 83),
        (77, 38),
        (75, 102),
    ];

    /// <summary>What strikes and dies away is written for this long.</summary>
    private static readonly Fraction Short = Fraction.Of(1, 32);

    /// <summary>The file; refused where something can't be played in the metre. Memory and time grow with the notes.</summary>
    public static Outcome<byte[]> Write(TimedPerformance performance, SoundPlan plan)
    {
        if (plan.Check(performance.Times) is { } fault)
        {
            return fault;
        }

        var voices = Voices(performance, plan).Where(voice => !voice.Notes.IsEmpty).ToImmutableArray();
        return voices.IsEmpty
            ? new Fault("nothing is left to be heard", Right: "a guitar, a click, a backing or a drone")
            : Midi.Write(performance.Line, new MidiWriting { Tempi = performance.Tempi, Voices = voices });
    }

    private static IEnumerable<MidiVoice> Voices(TimedPerformance performance, SoundPlan plan)
    {
        var clock = new MusicClock(performance.Times);
        if (plan.Guitar is { } sound)
        {
            yield return new MidiVoice("Guitar", 1, ProgramOf(sound), Guitar(performance, clock));
        }

        var clicks = plan.Clicks(performance).Select(stroke => Click(stroke, clock));
        yield return new MidiVoice("Click", DrumChannel, null, [.. clicks]);
        if (plan.Backing is { } backing)
        {
            var band = Band.Notes(performance.Times, backing);
            yield return new MidiVoice("Drums", DrumChannel, null, Part(band, clock, IsDrum));
            yield return new MidiVoice("Bass", 2, BassProgram, Part(band, clock, s => s == BandSound.Bass));
            yield return new MidiVoice(
                "Chords",
                3,
                ChordProgram,
                Part(band, clock, s => s == BandSound.Stab)
            );
        }

        if (plan.Drone is { } root)
        {
            var key = Drone.RootKey(root);
            var end = performance.Line.Line.End;
            var held = new[] { key, key + 7 }.Select(tone => new MidiVoiceNote(
                Fraction.Zero,
                end,
                tone,
                DroneVelocity
            ));
            yield return new MidiVoice("Drone", 4, DroneProgram, [.. held]);
        }
    }

    private static int ProgramOf(GuitarSound sound) =>
        sound switch
        {
            GuitarSound.Nylon => 25,
            GuitarSound.SteelString => 26,
            GuitarSound.DrivenElectric => 30,
            _ => 28,
        };

    // Onsets are exact where the string is struck with its note; what is brushed or raked before it falls on a near tick.
    private static ImmutableArray<MidiVoiceNote> Guitar(TimedPerformance performance, MusicClock clock)
    {
        var rhythm = performance.Times.Rhythm;
        var events = performance.EventsByNote();
        var notes = ImmutableArray.CreateBuilder<MidiVoiceNote>();
        foreach (var (i, played) in performance.Line.Notes.Index())
        {
            var onset = Performed(played.Note.Onset);
            foreach (var e in events[i])
            {
                var at = e.Seconds == performance.Times.Notes[i].OnsetSeconds ? onset : clock.At(e.Seconds);
                var end = e.Action == StringAction.Rake ? onset : Performed(played.Note.End);
                notes.Add(new MidiVoiceNote(at, end, (int)e.Key, Velocity(e.Strength)));
            }
        }

        return notes.ToImmutable();

        Fraction Performed(Fraction written) =>
            rhythm.Swing.Apply(written, rhythm.Meter, rhythm.NotesPerBeat);
    }

    private static MidiVoiceNote Click(ClickStroke stroke, MusicClock clock)
    {
        var (key, velocity) = Clicks[(int)stroke.Weight];
        var at = clock.At(stroke.Seconds);
        return new MidiVoiceNote(at, at + Short, key, velocity);
    }

    private static ImmutableArray<MidiVoiceNote> Part(
        ImmutableArray<BandNote> band,
        MusicClock clock,
        Func<BandSound, bool> isOf
    ) =>
        [
            .. band.Where(note => isOf(note.Sound))
                .Select(note =>
                {
                    var at = clock.At(note.Seconds);
                    var end = double.IsFinite(note.EndSeconds) ? clock.At(note.EndSeconds) : at + Short;
                    return new MidiVoiceNote(at, end, KeyOf(note), Velocity(note.Strength));
                }),
        ];

    private static bool IsDrum(BandSound sound) => sound is not (BandSound.Bass or BandSound.Stab);

    private static int KeyOf(BandNote note) =>
        note.Sound switch
        {
            BandSound.Kick => 36,
            BandSound.Snare => 38,
            BandSound.Hat => 42,
            BandSound.Ride => 51,
            _ => note.Key,
        };

    private static int Velocity(double strength) =>
        Math.Clamp((int)Math.Round(strength * MostVelocity), 1, MostVelocity);

    /// <summary>From seconds back to musical time; what sounds before the first bar line falls on it.</summary>
    private sealed class MusicClock(TimeMap times)
    {
        private const long Parts = 10_000_000;

        public Fraction At(double seconds)
        {
            var whole = times.BeatsAt(seconds) * times.Meter.Beat.ToDouble();
            return Fraction.Of((long)Math.Round(Math.Max(0, whole) * Parts), Parts);
        }
    }
}
