using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Rhythm;

namespace Passagework.Sound.Performance;

/// <summary>Plays what both hands do in time: from a realization to events on strings.</summary>
/// <example>
/// <c>Performer.Perform(realization, new PerformancePlan { Tempo = plan })</c>
/// </example>
public static class Performer
{
    private const int MostNotes = 200_000;
    private const double LoudestVelocity = 127;

    /// <summary>What the string model sounds.</summary>
    private const int LowestKey = 21;
    private const int HighestKey = 100;

    /// <summary>Bars that a line can be cut into, the last one counted whole.</summary>
    public static int BarsOf(Line line) => Timeline.BarsOf(line);

    /// <summary>
    /// Every instant of the line; refused where the bars don't exist, the music is too long or a note lies outside the
    /// instrument.
    /// </summary>
    public static Outcome<TimedPerformance> Perform(Realization realization, PerformancePlan plan)
    {
        if (Misplaced(realization) is { } fault)
        {
            return fault;
        }

        if ((long)realization.Notes.Length * plan.Tempo.Passes.Length > MostNotes)
        {
            return new Fault("the music has more than 200,000 notes", "", "fewer bars or fewer repeats");
        }

        return Timeline
            .Of(realization.Line, plan)
            .Then<TimedPerformance>(timeline =>
            {
                var notes = Unrolling.Of(realization, timeline);
                if (notes.IsEmpty)
                {
                    return new Fault("nothing is played in these bars", "bars", "bars with notes");
                }

                var timed = notes.Select(note => new TimedNote(
                    note.Played.Note.Index,
                    note.Pass,
                    note.OnsetSeconds,
                    note.EndSeconds
                ));
                return new TimedPerformance(
                    Events(notes, realization.Line.Recipe, plan),
                    new TimeMap(timeline, [.. timed]),
                    Written(notes, realization.Line, timeline),
                    timeline.Tempi
                );
            });
    }

    private static Fault? Misplaced(Realization realization)
    {
        var instrument = realization.Line.Recipe.Instrument;
        foreach (var note in realization.Notes)
        {
            foreach (var tone in note.Tones)
            {
                var key = tone.Tone.Midi;
                if (!instrument.Has(tone.Place) || instrument.MidiAt(tone.Place) != key)
                {
                    return Misplaced(
                        note,
                        $"the instrument has no key {key} at {tone.Place}",
                        "a place that it has"
                    );
                }

                if (key is < LowestKey or > HighestKey)
                {
                    return Misplaced(note, $"key {key} can't be made to sound", "keys from 21 to 100");
                }
            }
        }

        return null;
    }

    private static Fault Misplaced(PlayedNote note, FormattableString what, string right) =>
        new(
            FormattableString.Invariant(what),
            FormattableString.Invariant($"note {note.Note.Index + 1}"),
            right
        );

    private static ImmutableArray<StringEvent> Events(
        ImmutableArray<UnrolledNote> notes,
        Recipe recipe,
        PerformancePlan plan
    )
    {
        var uses = StringUses.Of(notes);
        var silences = Silences(notes);
        var weights = new PulseWeights(recipe.Rhythm);
        var writer = new EventWriter(recipe.Instrument, plan.Manner);
        for (var i = 0; i < notes.Length; i++)
        {
            var note = notes[i];
            var ends = note.Played.Tones.Select(
                (tone, at) => FingerRelease.Of(note, tone, uses[i][at], silences[i], plan.Manner)
            );
            var written = note.Played.Note;
            var velocity = AccentMap.Velocity(
                plan.Accents,
                weights.At(written.Onset),
                written.InGroup == 0,
                written.Accent
            );
            writer.Add(note, [.. ends], velocity / LoudestVelocity);
        }

        return [.. writer.Events];
    }

    // From each note on, when no note is written to sound any more.
    private static double[] Silences(ImmutableArray<UnrolledNote> notes)
    {
        var silences = new double[notes.Length];
        for (var i = notes.Length - 1; i >= 0; i--)
        {
            var goesOn = i + 1 < notes.Length && notes[i + 1].At.Onset <= notes[i].At.End;
            silences[i] = goesOn ? silences[i + 1] : notes[i].EndSeconds;
        }

        return silences;
    }

    // Swing is undone, since a line is written without it.
    private static Realization Written(ImmutableArray<UnrolledNote> notes, Line line, Timeline timeline)
    {
        var rhythm = line.Recipe.Rhythm;
        var played = notes.Select(
            (note, index) =>
            {
                var onset = rhythm.Swing.Undo(note.At.Onset, rhythm.Meter, rhythm.NotesPerBeat);
                var end = rhythm.Swing.Undo(note.At.End, rhythm.Meter, rhythm.NotesPerBeat);
                return note.Played with
                {
                    Note = note.Played.Note with { Index = index, Onset = onset, Duration = end - onset },
                };
            }
        );
        ImmutableArray<PlayedNote> all = [.. played];
        var whole = line with
        {
            Notes = [.. all.Select(note => note.Note)],
            Rests = [],
            End = timeline.BarTime(timeline.Bars),
        };
        return new Realization(whole, all);
    }
}
