using Passagework.Exercises;
using Passagework.Hands;

namespace Passagework.Engraving.Sheets;

/// <summary>Whether an exercise strains the fretting hand so much that it is kept to one short block a day.</summary>
/// <remarks>Limits chosen by us: wide reaches low on the neck, long slurred runs, long work of one finger.</remarks>
internal static class Strain
{
    private const int WideFrets = 4;
    private const int LowPosition = 7;
    private const int LongSlurs = 6;
    private const int ManyNotes = 24;
    private const double MostlyOneFinger = 0.75;

    /// <summary>The sentence that names the hand and the reason; null where there is none.</summary>
    public static string? Of(Measurement measurement)
    {
        var notes = measurement.Realization.Notes;
        if (Reason(measurement, notes) is not { } reason)
        {
            return null;
        }

        return $"{reason} the fretting hand: one short block a day, and shake it out between tries.";
    }

    private static string? Reason(Measurement measurement, IReadOnlyList<PlayedNote> notes)
    {
        if (notes.Any(IsWideReach))
        {
            return "The reach is wide for";
        }

        if (LongestSlur(notes) >= LongSlurs)
        {
            return "Long slurs tire";
        }

        return notes.Count >= ManyNotes && measurement.Fretting.FingerShare.Max() >= MostlyOneFinger
            ? "One finger does most of the work of"
            : null;
    }

    private static bool IsWideReach(PlayedNote note) =>
        note.Finger > 0 && note.Position < LowPosition && note.Place.Fret - note.Position >= WideFrets;

    private static int LongestSlur(IReadOnlyList<PlayedNote> notes)
    {
        var (longest, run) = (0, 0);
        foreach (var note in notes)
        {
            run = note.Note.Slur == Slur.None ? 0 : run + 1;
            longest = Math.Max(longest, run);
        }

        return longest;
    }
}
