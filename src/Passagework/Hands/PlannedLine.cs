using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Hands;

/// <summary>A line with both hands planned, and what it asks of them.</summary>
internal sealed record PlannedLine(Line Line, Fingering Fingering, StrokePlan Strokes, LineDemands Demands)
{
    /// <summary>The same as data for the areas that know no hands.</summary>
    public Realization Realization
    {
        get
        {
            var struck = Strokes.Struck.ToDictionary(struck => struck.Note, struck => struck.State);
            return new Realization(Line, [.. Line.Notes.Select(note => Played(note, struck))]);
        }
    }

    private PlayedNote Played(LineNote note, Dictionary<int, StrokeState> struck)
    {
        var fingered = Fingering.Notes[note.Index];
        var stroke = Strokes.Strokes[note.Index];
        return new PlayedNote(note, fingered.Place, fingered.Finger, fingered.Position, stroke)
        {
            RakedFrom =
                Line.Recipe.Picking.Technique == Technique.Rake
                && struck.TryGetValue(note.Index, out var state)
                    ? RakeRules.DraggedFrom(state)
                    : null,
            With = note.With.IsEmpty ? [] : Tones(note, struck[note.Index]),
        };
    }

    private ImmutableArray<PlayedTone> Tones(LineNote note, StrokeState struck) =>
        [
            .. note
                .With.Zip(Fingering.Notes[note.Index].With, (tone, held) => (Tone: tone, Held: held))
                .Select(
                    (pair, i) =>
                        new PlayedTone(
                            pair.Tone,
                            pair.Held.Place,
                            pair.Held.Finger,
                            struck.Chord!.Strokes[i + 1]
                        )
                ),
        ];
}
