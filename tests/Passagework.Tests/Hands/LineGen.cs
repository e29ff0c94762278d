using System.Collections.Immutable;
using CsCheck;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Rhythm;
using Passagework.Theory;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Tests.Hands;

/// <summary>Random short lines: any places, open strings, chords, slurs, slides, rests, swing, locks, capo, avoided fingers.</summary>
internal static class LineGen
{
    private static readonly string[] TuningNames = ["standard", "drop D", "open G", "bass", "seven-string"];

    private static readonly Gen<Tuning> Tunings = Gen.Int[0, 4]
        .Select(i => Tuning.TryParse(TuningNames[i], out var tuning) ? tuning : Tuning.Standard);

    // What lies under a note: strings further towards the ceiling, each with its distance in frets; for most notes nothing.
    private static readonly Gen<(int Strings, int Frets)[]> Under = Gen.Frequency(
        (8, Gen.Const(Array.Empty<(int, int)>())),
        (1, Gen.Select(Gen.Frequency((3, Gen.Const(1)), (1, Gen.Const(2))), Gen.Int[-2, 2]).Array[1, 2])
    );

    private static readonly Gen<DrawnNote> Notes = Gen.Select(
        Under,
        Gen.Frequency((1, Gen.Const(0)), (6, Gen.Int[1, 12])),
        Gen.Int[1, 4],
        Gen.Int[1, 3],
        Gen.Frequency((8, Gen.Const(0)), (1, Gen.Int[1, 6])),
        Gen.Frequency((4, Gen.Const(0)), (1, Gen.Const(1)), (1, Gen.Const(4))),
        Gen.Frequency((9, Gen.Const(false)), (1, Gen.Const(true))),
        (under, fret, number, gap, silence, slur, free) =>
            new DrawnNote(fret, number, gap, silence, under.Length > 0 ? 0 : slur, free, under)
    );

    private sealed record DrawnNote(
        int Fret,
        int String,
        int Gap,
        int Silence,
        int Slur,
        bool Free,
        (int Strings, int Frets)[] Under
    );

    private static readonly Gen<Lock> Locks = Gen.Select(
        Gen.Int[0, 3],
        Gen.Int[0, 4],
        Gen.Int[0, 3],
        (note, finger, kind) =>
            kind switch
            {
                0 => new Lock(note, Finger: finger),
                1 => new Lock(note, String: finger + 1),
                2 => new Lock(note, Position: (finger * 2) + 1),
                _ => new Lock(
                    note,
                    Stroke: finger switch
                    {
                        0 => Stroke.None,
                        1 or 2 => Stroke.Up,
                        _ => Stroke.Down,
                    }
                ),
            }
    );

    /// <summary>Lines of up to <paramref name="most"/> notes under a technique.</summary>
    public static Gen<Line> Of(Technique technique, int most, FingerOrder fingers = FingerOrder.Pima) =>
        Gen.Select(
            Notes.Array[1, most],
            Tunings,
            Gen.Int[0, 3],
            Gen.Select(Gen.Bool, Gen.Bool, Gen.Int[0, 2]),
            Gen.Frequency((3, Gen.Const(Array.Empty<Lock>())), (2, Locks.Array[1, 2])),
            Gen.Frequency((3, Gen.Const(Array.Empty<int>())), (1, Gen.Int[1, 4].Array[1, 2])),
            (notes, tuning, capo, switches, locks, avoid) =>
                Build(
                    notes,
                    new Recipe
                    {
                        Instrument = new Fretboard { Tuning = tuning, Capo = capo },
                        Rhythm = new RhythmPlan
                        {
                            Swing =
                                switches.Item1 && Swing.TryOf(Fraction.Of(2, 3), out var swing)
                                    ? swing
                                    : default,
                        },
                        Picking = new PickingPlan
                        {
                            Technique = technique,
                            First = (FirstStroke)switches.Item3,
                            Fingers = fingers,
                        },
                        Fretting = new FrettingPlan
                        {
                            SlidesAtShifts = switches.Item2,
                            Avoid = [.. avoid],
                            Locks =
                            [
                                .. locks
                                    .Where(locked =>
                                        locked.Note < notes.Length
                                        && (locked.String ?? 1) <= tuning.StringCount
                                    )
                                    .DistinctBy(locked => locked.Note),
                            ],
                        },
                    }
                )
        );

    private static Line Build(DrawnNote[] notes, Recipe recipe)
    {
        var line = ImmutableArray.CreateBuilder<LineNote>();
        var rests = ImmutableArray.CreateBuilder<Rest>();
        var pulse = recipe.Rhythm.Pulse;
        var onset = Fraction.Zero;
        foreach (var (fret, stringNumber, gap, silence, slur, free, under) in notes)
        {
            var place = Place.At(stringNumber, fret);
            var midi = recipe.Instrument.MidiAt(place);
            line.Add(
                new LineNote
                {
                    Index = line.Count,
                    Place = free ? null : place,
                    Midi = midi,
                    Pitch = new SpelledPitch(default, 4),
                    With = [.. Tones(place, under, recipe.Instrument, free)],
                    Onset = onset,
                    Duration = pulse * Fraction.Of(gap),
                    Group = line.Count / 2,
                    InGroup = line.Count % 2,
                    Accent = line.Count % 3 == 0,
                    Slur = (Slur)slur,
                }
            );
            onset += pulse * Fraction.Of(gap);
            if (silence > 0)
            {
                rests.Add(new Rest(onset, pulse * Fraction.Of(silence)));
                onset += pulse * Fraction.Of(silence);
            }
        }

        return new Line(recipe, line.ToImmutable(), rests.ToImmutable(), onset);
    }

    private static IEnumerable<LineTone> Tones(
        Place top,
        (int Strings, int Frets)[] under,
        Fretboard board,
        bool free
    )
    {
        var number = top.String;
        foreach (var (strings, frets) in under)
        {
            number += strings;
            if (number > board.Tuning.StringCount)
            {
                yield break;
            }

            var place = Place.At(number, Math.Max(0, top.Fret + frets));
            var midi = board.MidiAt(place);
            yield return new LineTone(free ? null : place, midi, Speller.Spell(null, [midi])[0]);
        }
    }
}
