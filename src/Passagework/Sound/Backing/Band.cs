using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;
using Passagework.Sound.Click;
using Passagework.Sound.Mixing;
using Passagework.Sound.Performance;
using Passagework.Theory;

namespace Passagework.Sound.Backing;

/// <summary>Kick, snare, cymbals, bass and chords for a progression, over the bars of a performance.</summary>
public static class Band
{
    /// <summary>All notes in order of time, from the first bar after the count-in; the same seed, the same notes.</summary>
    /// <exception cref="ArgumentException">The groove can't be played in the metre.</exception>
    public static ImmutableArray<BandNote> Notes(TimeMap times, BandPlan plan)
    {
        if (Grooves.Check(plan.Groove, times.Meter) is { } fault)
        {
            throw new ArgumentException(fault.ToString(), nameof(plan));
        }

        var division = Divided(plan.Groove, times.Rhythm);
        var (bass, chords, chance) = (new BassPart(), new ChordPart(), new SplitMix64(plan.Seed));
        var notes = new List<BandNote>();
        for (var bar = times.CountInBars; bar < times.Bars; bar++)
        {
            foreach (var beat in Beats(times.Meter, plan.Chords, bar - times.CountInBars))
            {
                var hits = DrumPart
                    .Beat(beat, division, bar - times.CountInBars, chance.NextUniform())
                    .Concat(bass.Beat(beat, division, chance.NextUniform()))
                    .Concat(chords.Beat(beat, division, chance.NextUniform()));
                notes.AddRange(hits.Select(hit => Timed(hit, times, bar)));
            }
        }

        return [.. notes.OrderBy(note => note.Seconds).ThenBy(note => note.Sound)];
    }

    /// <summary>The notes as sound.</summary>
    /// <param name="notes">The notes.</param>
    /// <param name="sounds">The sounds, kept from one call to the next.</param>
    public static StrikeTrack Sound(ImmutableArray<BandNote> notes, BandSounds sounds) =>
        new(
            notes.Select(note => new Strike(
                (long)Math.Round(note.Seconds * sounds.SampleRate),
                sounds.Of(note.Sound, note.Key),
                (float)note.Strength,
                double.IsFinite(note.EndSeconds)
                    ? (long)Math.Round(note.EndSeconds * sounds.SampleRate)
                    : long.MaxValue
            ))
        );

    private static BandNote Timed(Hit hit, TimeMap times, int bar)
    {
        var at = (times.Meter.Bar * Fraction.Of(bar)) + (times.Meter.Beat * hit.At);
        var end =
            hit.Beats == Fraction.Zero
                ? double.PositiveInfinity
                : times.SecondsAt(at + (times.Meter.Beat * hit.Beats));
        return new BandNote(times.SecondsAt(at), end, hit.Sound, hit.Key, hit.Strength);
    }

    // Beats shorter than a quarter note are not cut further: the cymbal would run in sixteenths.
    private static Division Divided(Groove groove, RhythmPlan rhythm)
    {
        var late = groove switch
        {
            Groove.Straight => Fraction.Of(1, 2),
            Groove.Swung when !rhythm.Swing.IsStraight && rhythm.NotesPerBeat == 2 => rhythm.Swing.Share,
            _ => Fraction.Of(2, 3),
        };
        return new Division(groove, late, rhythm.Meter.Beat >= Fraction.Of(1, 4));
    }

    private static IEnumerable<BandBeat> Beats(Meter meter, ChordProgression chords, int bar)
    {
        var places = BeatGroups.Places(BeatGroups.Of(meter));
        for (var beat = 0; beat < places.Length; beat++)
        {
            var (place, size) = places[beat];
            var last = beat == places.Length - 1;
            var chord = ChordAt(chords, bar, beat, places.Length);
            var next = last
                ? ChordAt(chords, bar + 1, 0, places.Length)
                : ChordAt(chords, bar, beat + 1, places.Length);
            yield return new BandBeat(
                beat,
                place == 0,
                size > 1 && place == size - 1,
                chord,
                beat == 0 || ChordAt(chords, bar, beat - 1, places.Length) != chord,
                next,
                last
            );
        }
    }

    private static Chord ChordAt(ChordProgression chords, int bar, int beat, int beats)
    {
        var inBar = chords.Bars[bar % chords.Bars.Length];
        return inBar[beat * inBar.Length / beats];
    }
}
