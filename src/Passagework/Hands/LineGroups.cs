using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Hands;

/// <summary>The groups of a line as rhythm sees them; notes added by an ending belong to none.</summary>
internal static class LineGroups
{
    /// <summary>Lengths from each group's start to the next one's, in pulses, with the accents inside.</summary>
    public static ImmutableArray<GroupShape> Of(Line line)
    {
        var pulse = line.Recipe.Rhythm.Pulse;
        var grouped = line.Notes.Where(note => note.Group is not null).ToArray();
        if (grouped.Length == 0)
        {
            return [];
        }

        var groups = ImmutableArray.CreateBuilder<GroupShape>();
        var first = 0;
        for (var i = 1; i <= grouped.Length; i++)
        {
            if (i < grouped.Length && grouped[i].Group == grouped[first].Group)
            {
                continue;
            }

            var start = grouped[first].Onset;
            var end = i < grouped.Length ? grouped[i].Onset : EndOf(line, grouped[^1]);
            var accents = grouped[first..i]
                .Where(note => note.Accent)
                .Select(note => (note.Onset - start) / pulse);
            groups.Add(new GroupShape((end - start) / pulse, i - first, [.. accents]));
            first = i;
        }

        return groups.ToImmutable();
    }

    // The last group lasts to the end of the line, or to the first note that an ending added.
    private static Fraction EndOf(Line line, LineNote last) =>
        last.Index + 1 < line.Notes.Length ? line.Notes[last.Index + 1].Onset : line.End;
}
