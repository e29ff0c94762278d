using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Rhythm;
using Passagework.Sound.Performance;
using Passagework.Tests.Hands;
using Passagework.Tests.Rhythm;

namespace Passagework.Tests.Sound.Performance;

/// <summary>Realizations written by hand, and performances of them at 120 beats a minute: a sixteenth lasts 0.125 s.</summary>
internal static class Played
{
    /// <summary>Seconds before the first bar line.</summary>
    public const double Lead = 0.1;

    /// <summary>
    /// Sixteenths such as <c>6:5/1D</c>: string, fret, finger, and a stroke (D, U, P, I, M, A, or - for a slur).
    /// </summary>
    public static Realization Of(string notes, Recipe? recipe = null)
    {
        var words = notes.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var places = words.Select(word =>
            word == "|" ? word : (word[^1] == '-' ? "h" : "") + word.Split('/')[0]
        );
        var line = Lines.Of(string.Join(' ', places), recipe);
        var hands = words.Where(word => word != "|").Select(word => word.Split('/')[1]);
        var played = line.Notes.Zip(
            hands,
            (note, hand) => new PlayedNote(note, note.Place!.Value, hand[0] - '0', 5, StrokeOf(hand[1])) // written with places
        );
        return new Realization(line, [.. played]);
    }

    /// <summary>Four places struck at once as a quarter note, from string 1 up.</summary>
    public static Realization Chord(Stroke stroke, params string[] places)
    {
        var single = Of($"{places[0]}/1D");
        var tones = places.Select(place =>
        {
            var tone = Lines.Of(place).Notes[0];
            return new PlayedTone(
                new LineTone(tone.Place, tone.Midi, tone.Pitch),
                tone.Place!.Value,
                1,
                stroke
            );
        });
        var note = single.Notes[0];
        var chord = note.Note with
        {
            Onset = Fraction.One,
            Duration = Fraction.Of(1, 4),
            With = [.. tones.Skip(1).Select(tone => tone.Tone)],
        };
        return new Realization(
            single.Line with
            {
                Notes = [chord],
                End = Fraction.Of(2),
            },
            [note with { Note = chord, Stroke = stroke, With = [.. tones.Skip(1)] }]
        );
    }

    public static Recipe Swung(string share, int notesPerBeat) =>
        new()
        {
            Rhythm = new RhythmPlan { Swing = Beats.Swing(share), NotesPerBeat = notesPerBeat },
        };

    public static PerformancePlan At(double bpm = 120, int times = 1) =>
        new() { Tempo = TempoPlan.Steady(Beats.Tempo(bpm), times).OrThrow(), LeadSeconds = Lead };

    public static TimedPerformance Perform(Realization realization, PerformancePlan? plan = null) =>
        Performer.Perform(realization, plan ?? At()).OrThrow();

    private static Stroke StrokeOf(char letter) =>
        letter switch
        {
            'D' => Stroke.Down,
            'U' => Stroke.Up,
            'P' => Stroke.Thumb,
            'I' => Stroke.Index,
            'M' => Stroke.Middle,
            'A' => Stroke.Ring,
            '-' => Stroke.None,
            _ => throw new ArgumentException($"{letter}", nameof(letter)),
        };
}
