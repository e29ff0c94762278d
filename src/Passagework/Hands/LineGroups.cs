using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Hands;

/// <summary>The groups of a line as rhythm sees them; what an ending adds or holds belongs to none.</summary>
internal static class LineGroups
{
    /// <summary>Lengths from each group's start to the next one's, in pulses, with the accents inside.</summary>
    public static ImmutableArray<GroupShape> Of(Line line)
    {
        var pulse = line.Recipe.Rhythm.Pulse;
        var groups = Runs(line);
        var shapes = ImmutableArray.CreateBuilder<GroupShape>(groups.Length);
        for (var i = 0; i < groups.Length; i++)
        {
            var start = groups[i][0].Onset;
            var length = i + 1 < groups.Length ? groups[i + 1][0].Onset - start : LastLength(line, groups);
            var accents = groups[i].Where(note => note.Accent).Select(note => (note.Onset - start) / pulse);
            shapes.Add(new GroupShape(length / pulse, groups[i].Length, [.. accents]));
        }

        return shapes.MoveToImmutable();
    }

    private static LineNote[][] Runs(Line line)
    {
        var runs = new List<List<LineNote>>();
        foreach (var note in line.Notes.Where(note => note.Group is not null))
        {
            if (runs.Count == 0 || runs[^1][^1].Group != note.Group)
            {
                runs.Add([]);
            }

            runs[^1].Add(note);
        }

        return [.. runs.Select(run => run.ToArray())];
    }

    // The last group lasts to the first note that an ending added. A note that an ending holds is no longer for the
    // groups: there the last group is as long as an earlier one with the same rhythm.
    private static Fraction LastLength(Line line, LineNote[][] groups)
    {
        var last = groups[^1];
        var next = last[^1].Index + 1;
        var end = next < line.Notes.Length ? line.Notes[next].Onset : line.End;
        var held = line.Recipe.Movement.Ending is Ending.HoldLast or Ending.FillBar;
        for (var i = groups.Length - 2; i >= 0 && held; i--)
        {
            if (Rhythm(groups[i]).SequenceEqual(Rhythm(last)))
            {
                return groups[i + 1][0].Onset - groups[i][0].Onset;
            }
        }

        return end - last[0].Onset;
    }

    private static IEnumerable<Fraction> Rhythm(LineNote[] group) =>
        group.Select(note => note.Onset - group[0].Onset);
}
