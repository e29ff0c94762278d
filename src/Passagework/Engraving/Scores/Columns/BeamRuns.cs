using System.Collections.Immutable;
using Passagework.Notation;

namespace Passagework.Engraving.Scores;

/// <summary>Joins the columns of a bar, or of a part that stays on one line, under beams and points their stems.</summary>
internal static class BeamRuns
{
    /// <summary>Sets beams and stems of each column.</summary>
    public static void Join(ReadOnlySpan<Column> columns)
    {
        var written = ImmutableArray.CreateBuilder<ScoreNote>(columns.Length);
        foreach (var column in columns)
        {
            written.Add(column.Written);
        }

        var beams = BeamMarks.Of(written.MoveToImmutable());
        for (var first = 0; first < columns.Length; )
        {
            var end = first + 1;
            while (end < columns.Length && !beams[first].IsEmpty && RunsOn(beams[end - 1]))
            {
                end++;
            }

            Join(columns[first..end], beams.AsSpan()[first..end]);
            first = end;
        }
    }

    private static bool RunsOn(ImmutableArray<BeamMark> before) =>
        before is [BeamMark.Begin or BeamMark.Continue, ..];

    private static void Join(ReadOnlySpan<Column> columns, ReadOnlySpan<ImmutableArray<BeamMark>> beams)
    {
        var positions = new List<int>();
        foreach (var column in columns)
        {
            foreach (var head in column.Heads)
            {
                positions.Add(head.Position);
            }
        }

        var all = positions.ToArray();
        var up =
            all.Length > 0 && (columns.Length > 1 ? StemRules.GroupPointsUp(all) : StemRules.PointsUp(all));
        ImmutableArray<Column> run = [.. columns];
        for (var i = 0; i < columns.Length; i++)
        {
            columns[i].Up = up;
            columns[i].Run = run;
            columns[i].Beams = beams[i];
        }
    }
}
