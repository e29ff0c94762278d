using System.Collections.Immutable;

namespace Passagework.Notation;

/// <summary>The beams of a bar, by beat and tuplet.</summary>
internal static class BeamMarks
{
    /// <summary>For each note the word of each beam from the first, none where it has a flag or nothing.</summary>
    public static ImmutableArray<ImmutableArray<string>> Of(ImmutableArray<ScoreNote> bar)
    {
        var marks = new ImmutableArray<string>[bar.Length];
        for (var first = 0; first < bar.Length; )
        {
            var end = first + 1;
            while (end < bar.Length && MayJoin(bar[end - 1], bar[end]))
            {
                end++;
            }

            for (var at = first; at < end; at++)
            {
                marks[at] = end - first == 1 ? [] : Levels(bar, first, end, at);
            }

            first = end;
        }

        return [.. marks];
    }

    private static bool MayJoin(ScoreNote before, ScoreNote after) =>
        before.Note is not null
        && after.Note is not null
        && before.Value.Flags > 0
        && after.Value.Flags > 0
        && before.BeamGroup == after.BeamGroup
        && before.Tuplet == after.Tuplet;

    private static ImmutableArray<string> Levels(ImmutableArray<ScoreNote> bar, int first, int end, int at)
    {
        var words = ImmutableArray.CreateBuilder<string>();
        // The schema has eight beams; a 1024th has exactly eight flags.
        for (var level = 1; level <= bar[at].Value.Flags; level++)
        {
            var before = at > first && bar[at - 1].Value.Flags >= level;
            var after = at + 1 < end && bar[at + 1].Value.Flags >= level;
            words.Add(
                (before, after) switch
                {
                    (true, true) => "continue",
                    (true, false) => "end",
                    (false, true) => "begin",
                    _ => at == first ? "forward hook" : "backward hook",
                }
            );
        }

        return words.ToImmutable();
    }
}
