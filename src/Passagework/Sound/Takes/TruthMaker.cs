using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Sound.Takes;

/// <summary>Writes down what a take is made of.</summary>
internal sealed class TruthMaker(TakeHands hands, AttackMeter meter)
{
    private const int Decimals = 6;
    private const double LoudestVelocity = 127;

    /// <summary>One row for each note, in order of time.</summary>
    public ImmutableArray<TruthNote> Notes() => [.. hands.Strokes.Select(Row)];

    /// <summary>The score of one time through.</summary>
    public static ImmutableArray<ScoreNote> Score(Realization realization)
    {
        var rhythm = realization.Line.Recipe.Rhythm;
        var rows = ImmutableArray.CreateBuilder<ScoreNote>();
        PlayedNote? before = null;
        foreach (var played in realization.Notes)
        {
            var note = played.Note;
            var at = rhythm.Swing.Apply(note.Onset, rhythm.Meter, rhythm.NotesPerBeat) / rhythm.Meter.Beat;
            var crossing = before is null ? 0 : before.Place.String - played.Place.String;
            rows.AddRange(
                played.Tones.Select(tone => new ScoreNote(
                    note.Index,
                    Math.Round(at.ToDouble(), Decimals),
                    tone.Tone.Midi,
                    tone.Place.String,
                    tone.Place.Fret,
                    tone.Stroke,
                    InGroup(note),
                    crossing
                ))
            );
            before = played;
        }

        return rows.ToImmutable();
    }

    private TruthNote Row(TakeStroke stroke, int at)
    {
        var (note, extra) = (stroke.Note, stroke.Kind == TruthKind.Extra);
        return new TruthNote
        {
            Kind = stroke.Kind,
            ScoreIndex = extra ? null : note.Played.Note.Index,
            Pass = note.Pass,
            PlannedSeconds = Math.Round(stroke.Event.Seconds, Decimals),
            DeviationMs = extra ? 0 : Math.Round(hands.DeviationMs(note), Decimals - 3),
            Sound = stroke.Sounds ? SoundOf(stroke, at) : null,
            ExpectedMidi = stroke.Expected,
            String = stroke.Place.String,
            Fret = stroke.Place.Fret,
            Technique = stroke.Event.Action,
            Stroke = note.Played.Stroke,
            InGroup = extra ? null : InGroup(note.Played.Note),
            Crossing = extra ? 0 : note.Crossing,
            Shifted = !extra && note.Shifted,
        };
    }

    private TruthSound SoundOf(TakeStroke stroke, int at)
    {
        var later = hands.Strokes.Skip(at + 1).Where(other => other.Sounds);
        var again = later.FirstOrDefault(other => other.Place.String == stroke.Place.String);
        var end = Math.Min(stroke.Event.EndSeconds, again?.Event.Seconds ?? double.PositiveInfinity);
        var next = later.FirstOrDefault(other => other.Kind != TruthKind.Extra && other.Note != stroke.Note);
        var ring = next is null ? 0 : Math.Max(0, end - next.Event.Seconds);
        var attack = meter.Of(hands.Tuned(stroke.Event));
        return new TruthSound(
            new AttackTimes(
                Math.Round(attack.Hundredth, Decimals),
                Math.Round(attack.Tenth, Decimals),
                Math.Round(attack.Half, Decimals)
            ),
            (int)stroke.Event.Key,
            (int)Math.Round(stroke.Event.Strength * LoudestVelocity),
            Math.Round(end, Decimals),
            Math.Round(ring, Decimals)
        );
    }

    private static (int Group, int Place)? InGroup(LineNote note) =>
        note is { Group: { } group, InGroup: { } place } ? (group, place) : null;
}
