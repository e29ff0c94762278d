using System.Collections.Immutable;

namespace Passagework.Choosing;

/// <summary>The weight of one criterion at which another candidate takes the lead.</summary>
/// <param name="Criterion">The criterion whose weight is moved, the rest kept in proportion.</param>
/// <param name="Weight">Where the two tie; beyond it, seen from the present weight, the new one leads.</param>
/// <param name="Winner">Who leads then.</param>
public sealed record Flip(int Criterion, double Weight, int Winner);

/// <summary>What one weight would have to be for the answer to change.</summary>
/// <remarks>
/// With weight t on a criterion and the rest in proportion every score is a straight line in t: t·v + (1 − t)·s, s the
/// score without the criterion. So the leader falls where the first line crosses its own, on either side.
/// </remarks>
public static class FlipPoints
{
    private const double Flat = 1e-12;

    /// <summary>The nearest flip of each criterion below and above its present weight, where there is one.</summary>
    public static ImmutableArray<Flip> Of(Choice choice)
    {
        var leader = Ranking.Of(choice).Leader;
        var flips = ImmutableArray.CreateBuilder<Flip>();
        for (var k = 0; k < choice.Table.Criteria.Length; k++)
        {
            foreach (var upward in (ReadOnlySpan<bool>)[false, true])
            {
                if (Nearest(choice, leader, k, upward) is { } flip)
                {
                    flips.Add(flip);
                }
            }
        }

        return flips.ToImmutable();
    }

    /// <summary>Where two candidates tie when one weight is moved; null where that is at no weight within 0 and 1.</summary>
    public static double? Between(Choice choice, int first, int second, int criterion)
    {
        var slope = Slope(choice, first, criterion) - Slope(choice, second, criterion);
        var gap = choice.Score(first) - choice.Score(second);
        var weight = choice.Weights.Shares[criterion] - (gap / slope);
        return Math.Abs(slope) > Flat && weight is > 0 and < 1 ? weight : null;
    }

    private static Flip? Nearest(Choice choice, int leader, int criterion, bool upward)
    {
        var now = choice.Weights.Shares[criterion];
        var own = Slope(choice, leader, criterion);
        var score = choice.Score(leader);
        var room = upward ? 1 - now : now;
        (double Way, double Pace, int Rival) nearest = (room - Flat, 0, -1);
        for (var rival = 0; rival < choice.Count; rival++)
        {
            // Pace: how fast the rival gains on the leader as the weight moves this way.
            var pace = (Slope(choice, rival, criterion) - own) * (upward ? 1 : -1);
            var way = Math.Max(0, score - choice.Score(rival)) / pace;
            var isNearer =
                way < nearest.Way - Flat || (way < nearest.Way + Flat && pace > nearest.Pace + Flat);
            if (pace > Flat && isNearer && way < room - Flat)
            {
                nearest = (way, pace, rival);
            }
        }

        return nearest.Rival < 0
            ? null
            : new Flip(criterion, upward ? now + nearest.Way : now - nearest.Way, nearest.Rival);
    }

    // Change of the score for a unit of the weight.
    private static double Slope(Choice choice, int candidate, int criterion) =>
        choice.Table.Counted(candidate, criterion)
        - choice.Score(candidate, choice.Weights.Rest(criterion).AsSpan());
}
