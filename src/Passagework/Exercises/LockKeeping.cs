using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Exercises;

/// <summary>Which locks outlive a change of the idea.</summary>
internal static class LockKeeping
{
    /// <summary>
    /// The changed recipe with the locks of those notes that still lie where they lay; on another note what a teacher
    /// fixed would be wrong. Where the changed idea can't be laid out no lock is left.
    /// </summary>
    public static Recipe Fit(Recipe before, Recipe after)
    {
        var locks = after.Fretting.Locks;
        if (locks.IsEmpty)
        {
            return after;
        }

        var (old, now) = (NotesOf(before), NotesOf(after));
        return after with
        {
            Fretting = after.Fretting with
            {
                Locks =
                [
                    .. locks.Where(held =>
                        held.Note < Math.Min(old.Length, now.Length)
                        && Lies(old[held.Note]) == Lies(now[held.Note])
                    ),
                ],
            },
        };
    }

    private static (Instrument.Place?, int) Lies(LineNote note) => (note.Place, note.Midi);

    private static ImmutableArray<LineNote> NotesOf(Recipe recipe) =>
        LineBuilder
            .Build(recipe with { Fretting = recipe.Fretting with { Locks = [] } })
            .TryGet(out var line, out _)
            ? line.Notes
            : [];
}
