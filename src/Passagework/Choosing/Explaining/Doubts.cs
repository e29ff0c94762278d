using Passagework.Choosing.Measures;
using Passagework.Foundation;

namespace Passagework.Choosing.Explaining;

/// <summary>What an answer is least sure of, in one line.</summary>
internal static class Doubts
{
    /// <summary>The figure with the largest error, what it rests on, and how often the leader stays ahead all the same.</summary>
    public static string Of(ChoiceAnswer answer)
    {
        var (leader, runnerUp) = (answer.Ranking.Leader, answer.RunnerUp);
        var missing = answer.Choice.Weights.Used.Where(k =>
            answer.Choice.Table.IsMissing(leader, k) || answer.Choice.Table.IsMissing(runnerUp, k)
        );
        if (missing.FirstOrDefault(-1) is >= 0 and var unknown)
        {
            return $"{NumberWords.Sentence(answer.Criteria[unknown].Title)} could not be measured on both; it counts as anything from nothing to full.";
        }

        var weakest = answer.Choice.Weights.Used.MaxBy(k => Error(answer, k, leader, runnerUp));
        return Error(answer, weakest, leader, runnerUp) > 0
            ? $"Least sure: {answer.Criteria[weakest].Title}, which rests on {answer.Criteria[weakest].Basis}. {Cases(answer, leader, runnerUp)}"
            : "These figures are counted or marked, so nothing in them is guessed; whether they are the right ones is yours to say.";
    }

    private static string Cases(ChoiceAnswer answer, int leader, int runnerUp)
    {
        var (ahead, behind) = (answer.DrawsAhead(leader, runnerUp), answer.DrawsAhead(runnerUp, leader));
        return answer.Ranking.IsTied
            ? FormattableString.Invariant(
                $"With other plausible hands and music the two stay level in {Figure.DrawCount - ahead - behind} of {Figure.DrawCount} cases."
            )
            : FormattableString.Invariant(
                $"With other plausible hands and music it stays ahead in {ahead} of {Figure.DrawCount} cases."
            );
    }

    private static double Error(ChoiceAnswer answer, int criterion, int first, int second)
    {
        var (one, other) = (ErrorOf(first), ErrorOf(second));
        return answer.Choice.Weights.Shares[criterion] * Math.Sqrt((one * one) + (other * other));

        double ErrorOf(int candidate) => answer.Choice.Table.Candidates[candidate].Marks[criterion].Error;
    }
}
