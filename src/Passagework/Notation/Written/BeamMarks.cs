using System.Collections.Immutable;

namespace Passagework.Notation;

/// <summary>What one beam does at one note.</summary>
internal enum BeamMark
{
    /// <summary>Starts here and runs on.</summary>
    Begin,

    /// <summary>Comes from the note before and runs on.</summary>
    Continue,

    /// <summary>Comes from the note before and stops.</summary>
    End,

    /// <summary>A stub towards the note after.</summary>
    ForwardHook,

    /// <summary>A stub towards the note before.</summary>
    BackwardHook,
}

/// <summary>The beams of a bar, by beat and tuplet.</summary>
internal static class BeamMarks
{
    // From 32nds on the second beam shows the halves of a beat.
    private const int ManyFlags = 3;

    /// <summary>For each note what each beam does, from the first; none where it has a flag or nothing.</summary>
    public static ImmutableArray<ImmutableArray<BeamMark>> Of(ImmutableArray<ScoreNote> bar)
    {
        var marks = new ImmutableArray<BeamMark>[bar.Length];
        for (var first = 0; first < bar.Length; )
        {
            var end = first + 1;
            while (end < bar.Length && MayJoin(bar[end - 1], bar[end]))
            {
                end++;
            }

            var group = bar[first..end];
            for (var at = 0; at < group.Length; at++)
            {
                marks[first + at] = group.Length == 1 ? [] : Levels(group, at);
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

    private static ImmutableArray<BeamMark> Levels(ImmutableArray<ScoreNote> group, int at)
    {
        var marks = ImmutableArray.CreateBuilder<BeamMark>();
        // The MusicXML schema has eight beams; a 1024th has exactly eight flags.
        for (var level = 1; level <= group[at].Value.Flags; level++)
        {
            marks.Add(
                (Joins(group, at - 1, level), Joins(group, at, level)) switch
                {
                    (true, true) => BeamMark.Continue,
                    (true, false) => BeamMark.End,
                    (false, true) => BeamMark.Begin,
                    _ => PointsOn(group, at) ? BeamMark.ForwardHook : BeamMark.BackwardHook,
                }
            );
        }

        return marks.ToImmutable();
    }

    // Whether a beam runs from one note to the next; the second and finer ones stop at the parts of the beat.
    private static bool Joins(ImmutableArray<ScoreNote> group, int at, int level) =>
        at >= 0
        && at + 1 < group.Length
        && Math.Min(group[at].Value.Flags, group[at + 1].Value.Flags) >= level
        && (level == 1 || !Breaks(group, at));

    private static bool Breaks(ImmutableArray<ScoreNote> group, int at) =>
        group[at].BeamPart is { } part
        && part.Start != group[at + 1].BeamPart?.Start
        && (part.Always || group.Any(note => note.Value.Flags >= ManyFlags));

    private static bool PointsOn(ImmutableArray<ScoreNote> group, int at) =>
        at == 0 || (at + 1 < group.Length && group[at].Onset == group[at].BeamPart?.Start);
}
