using System.Collections.Immutable;

namespace Passagework.Choosing;

/// <summary>Candidates that the measures can't tell apart, and forms of one family, share one place, so that copies do not split a share.</summary>
internal static class NearCopies
{
    /// <summary>
    /// For each candidate the best-placed one from which it differs on no criterion by more than the larger of their
    /// errors, or with which it shares a family; itself where there is none. Who stands for others is never stood for.
    /// </summary>
    public static ImmutableArray<int> StandFor(Choice choice)
    {
        var standsFor = new int[choice.Count];
        var standing = new List<int>();
        foreach (var candidate in Ranking.Of(choice).Standings.Select(standing => standing.Candidate))
        {
            var like = standing.FindIndex(other => AreAlike(choice, candidate, other));
            standsFor[candidate] = like < 0 ? candidate : standing[like];
            if (like < 0)
            {
                standing.Add(candidate);
            }
        }

        return [.. standsFor];
    }

    private static bool AreAlike(Choice choice, int a, int b)
    {
        if (choice.Table.Candidates[a].Family == choice.Table.Candidates[b].Family)
        {
            return true;
        }

        var (one, other) = (choice.Table.Candidates[a].Marks, choice.Table.Candidates[b].Marks);
        foreach (var k in choice.Weights.Used)
        {
            var isMissing = one[k].Value is null;
            var apart = Math.Abs(choice.Table.Counted(a, k) - choice.Table.Counted(b, k));
            if (isMissing != other[k].Value is null || apart > Math.Max(one[k].Error, other[k].Error))
            {
                return false;
            }
        }

        return true;
    }
}
