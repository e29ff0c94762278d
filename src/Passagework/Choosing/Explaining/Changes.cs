using System.Globalization;

namespace Passagework.Choosing.Explaining;

/// <summary>What would have to count how much for the answer to change.</summary>
internal static class Changes
{
    /// <summary>The nearest flip of one weight in words; what a change of several could do where there is none.</summary>
    public static string Of(ChoiceAnswer answer)
    {
        var weights = answer.Choice.Weights.Shares;
        if (answer.NearestFlip is not { } nearest)
        {
            return answer.SmallestChange is { } change
                ? $"No single weight would change that; several moved together would bring {Mention(answer, change.Rival)} level."
                : "No way of weighing these criteria would change that.";
        }

        if (answer.Ranking.IsTied)
        {
            return $"They are level as it is weighed now; with a little {(Gains(answer, nearest) ? "more" : "less")} weight on {answer.Criteria[nearest.Criterion].Title}, {Mention(answer, nearest.Winner)} would lead.";
        }

        var (now, then) = (weights[nearest.Criterion], nearest.Weight);
        var way = then > now ? "more" : "less";
        return $"If {answer.Criteria[nearest.Criterion].Title} counted for {way} than {Percent(then)} (now {Percent(now)}), {Mention(answer, nearest.Winner)} would lead.";
    }

    // Whether the one that would lead gains when the criterion counts more.
    private static bool Gains(ChoiceAnswer answer, Flip flip) =>
        answer.Choice.Table.Counted(flip.Winner, flip.Criterion)
        > answer.Choice.Table.Counted(answer.Ranking.Leader, flip.Criterion);

    /// <summary>Whole percent, a decimal where whole ones would hide a difference.</summary>
    private static string Percent(double share) =>
        (100 * share).ToString(share is > 0 and < 0.1 ? "0.0" : "0", CultureInfo.InvariantCulture) + " %";

    private static string Mention(ChoiceAnswer answer, int candidate) =>
        answer.Candidates[candidate].Source.Mention;
}
