using System.Collections.Immutable;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Hands;

namespace Passagework.Choosing.Explaining;

/// <summary>What sentences are made of, counted on what is played.</summary>
internal static class Facts
{
    private const double Most = 0.6;

    /// <summary>The name of a fretting finger.</summary>
    public static string FingerName(int finger) =>
        finger switch
        {
            1 => "first",
            2 => "second",
            3 => "third",
            _ => "little",
        };

    /// <summary>The hand that needs more time in most moves; null where they take turns.</summary>
    public static string? BusierHand(MeasuredCandidate candidate)
    {
        var moves = candidate.Forms.SelectMany(form => form.Measured.Demands.Skip(1)).ToList();
        var fretting = (double)moves.Count(move => move.FrettingMs > move.PickingMs) / moves.Count;
        if (fretting >= Most)
        {
            return "fretting";
        }

        var picking = (double)moves.Count(move => move.PickingMs > move.FrettingMs) / moves.Count;
        return picking >= Most ? "picking" : null;
    }

    /// <summary>The moves from the last note of a group to the first of the next, of one form.</summary>
    public static ImmutableArray<(PlayedNote From, PlayedNote To)> Joins(MeasuredForm form)
    {
        var notes = form.Realization.Notes;
        return
        [
            .. notes
                .Zip(notes.Skip(1))
                .Where(pair =>
                    pair.First.Note.Group is { } before
                    && pair.Second.Note.Group is { } after
                    && before != after
                ),
        ];
    }

    /// <summary>Whether a move leaves out a string.</summary>
    public static bool Skips((PlayedNote From, PlayedNote To) move) =>
        Math.Abs(move.From.Place.String - move.To.Place.String) > 1;

    /// <summary>The mean least ceiling of the forms for a beginner and for an expert, notes a second; null where nothing limits.</summary>
    public static (double First, double Last)? EndCeilings(MeasuredCandidate candidate) =>
        candidate.Forms.All(form => form is { First.Least: not null, Last.Least: not null })
            ? (
                candidate.Forms.Average(form => form.First.Least ?? 0),
                candidate.Forms.Average(form => form.Last.Least ?? 0)
            )
            : null;

    /// <summary>Notes a beat as the exercise is written.</summary>
    public static int NotesPerBeat(MeasuredCandidate candidate) =>
        candidate.Forms[0].Realization.Line.Recipe.Rhythm.NotesPerBeat;
}
