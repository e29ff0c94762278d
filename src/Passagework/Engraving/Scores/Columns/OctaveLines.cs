using System.Collections.Immutable;
using Passagework.Exercises;

namespace Passagework.Engraving.Scores;

/// <summary>Finds the notes that are written an octave lower under a line that says so.</summary>
/// <remarks>
/// A note with more than four ledger lines begins one; it goes on to both sides over notes with two ledger lines or
/// more, so that few lines begin and end (limits chosen by us).
/// </remarks>
internal static class OctaveLines
{
    /// <summary>Half spaces of an octave.</summary>
    public const int Octave = 7;

    // The fifth ledger line; the second.
    private const int High = StaffPlace.FirstLedger + 8;
    private const int GoesOn = StaffPlace.FirstLedger + 2;

    /// <summary>For each note whether it is written an octave lower.</summary>
    /// <param name="notes">What is played.</param>
    /// <param name="position">Half spaces of a tone above the middle line.</param>
    public static ImmutableArray<bool> Of(ImmutableArray<PlayedNote> notes, Func<PlayedTone, int> position)
    {
        var lowest = new int[notes.Length];
        var highest = new int[notes.Length];
        for (var i = 0; i < notes.Length; i++)
        {
            var note = notes[i];
            var single = note.With.IsEmpty ? position(note.Highest) : (int?)null;
            lowest[i] = single ?? note.Tones.Min(position);
            highest[i] = single ?? note.Tones.Max(position);
        }

        var under = new bool[notes.Length];
        for (var i = 0; i < notes.Length; i++)
        {
            // A chord that reaches far down stays where it is.
            var begins = highest[i] >= High && lowest[i] >= 0;
            var goesOn = i > 0 && under[i - 1] && lowest[i] >= GoesOn;
            under[i] = begins || goesOn;
            for (var back = i - 1; begins && back >= 0 && !under[back] && lowest[back] >= GoesOn; back--)
            {
                under[back] = true;
            }
        }

        return [.. under];
    }
}
