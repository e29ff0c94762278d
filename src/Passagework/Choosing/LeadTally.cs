using System.Collections.Immutable;

namespace Passagework.Choosing;

/// <summary>How often each candidate leads when something is varied.</summary>
/// <param name="First">Share in which each is first; a tie is shared out. A near-copy has the share of the one that stands for it.</param>
/// <param name="Last">Share in which each is last.</param>
/// <param name="Behind">Share in which the leader of the ranking is ahead of each.</param>
public sealed record LeadShares(
    ImmutableArray<double> First,
    ImmutableArray<double> Last,
    ImmutableArray<double> Behind
);

/// <summary>Counts who leads over many sets of scores.</summary>
internal sealed class LeadTally
{
    private readonly int _leader;
    private readonly ImmutableArray<int> _standsFor;
    private readonly int[] _standing;
    private readonly double[] _first;
    private readonly double[] _last;
    private readonly int[] _behind;
    private int _count;

    /// <summary>Nothing counted yet.</summary>
    /// <param name="leader">Whose lead over the others is counted.</param>
    /// <param name="standsFor">For each candidate the one that stands for it, itself as a rule.</param>
    public LeadTally(int leader, ImmutableArray<int> standsFor)
    {
        _leader = leader;
        _standsFor = standsFor;
        _standing = [.. standsFor.Distinct().Order()];
        _first = new double[standsFor.Length];
        _last = new double[standsFor.Length];
        _behind = new int[standsFor.Length];
    }

    /// <summary>Counts one set of scores, one a candidate.</summary>
    public void Add(ReadOnlySpan<double> scores)
    {
        _count++;
        var (most, least) = (double.NegativeInfinity, double.PositiveInfinity);
        foreach (var a in _standing)
        {
            most = Math.Max(most, scores[a]);
            least = Math.Min(least, scores[a]);
        }

        ShareOut(_first, scores, most);
        ShareOut(_last, scores, least);
        var toBeat = scores[_leader] - Ranking.Tolerance;
        for (var a = 0; a < _behind.Length; a++)
        {
            _behind[a] += scores[a] < toBeat ? 1 : 0;
        }
    }

    /// <summary>The shares so far.</summary>
    public LeadShares Shares() =>
        new(
            [.. _standsFor.Select(a => _first[a] / _count)],
            [.. _standsFor.Select(a => _last[a] / _count)],
            [.. _behind.Select(times => (double)times / _count)]
        );

    private void ShareOut(double[] shares, ReadOnlySpan<double> scores, double goal)
    {
        var (equal, found) = (0, 0);
        foreach (var a in _standing)
        {
            if (Math.Abs(scores[a] - goal) < Ranking.Tolerance)
            {
                (equal, found) = (equal + 1, a);
            }
        }

        if (equal == 1)
        {
            shares[found]++;
            return;
        }

        foreach (var a in _standing)
        {
            shares[a] += Math.Abs(scores[a] - goal) < Ranking.Tolerance ? 1.0 / equal : 0;
        }
    }
}
