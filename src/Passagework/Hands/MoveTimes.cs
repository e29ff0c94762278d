using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Hands;

/// <summary>The time there is for the move that leads to each note, in ms at a tempo, swing included.</summary>
/// <param name="Fretting">Since the note before; null for the first.</param>
/// <param name="Picking">Since the stroke before; null for the first stroke and for slurred notes.</param>
internal sealed record MoveTimes(ImmutableArray<double?> Fretting, ImmutableArray<double?> Picking)
{
    // A tempo next to nothing gives time without end; beyond eleven days it makes no difference (chosen by us).
    private const double LongestMs = 1e9;

    /// <summary>The times of what is played at so many felt beats a minute.</summary>
    public static MoveTimes Of(Realization played, double tempoBpm)
    {
        var rhythm = played.Line.Recipe.Rhythm;
        var msPerWhole = Math.Min(LongestMs, 60_000 / tempoBpm / rhythm.Meter.Beat.ToDouble());
        var onsets = played
            .Notes.Select(note =>
                rhythm.Swing.Apply(note.Note.Onset, rhythm.Meter, rhythm.NotesPerBeat).ToDouble() * msPerWhole
            )
            .ToList();
        var (fretting, picking) = (new double?[onsets.Count], new double?[onsets.Count]);
        var struck = -1;
        for (var note = 0; note < onsets.Count; note++)
        {
            fretting[note] = note == 0 ? null : onsets[note] - onsets[note - 1];
            if (played.Notes[note].Stroke != Stroke.None)
            {
                picking[note] = struck < 0 ? null : onsets[note] - onsets[struck];
                struck = note;
            }
        }

        return new MoveTimes([.. fretting], [.. picking]);
    }
}
