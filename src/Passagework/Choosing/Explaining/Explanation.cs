using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Choosing.Explaining;

/// <summary>Why the leader leads, in sentences built from what was computed and nothing else.</summary>
public sealed record Explanation
{
    private const double Half = 0.5;
    private const int MostReasons = 2;

    private Explanation() { }

    /// <summary>Who comes first, how clearly, and who is next.</summary>
    public required string Verdict { get; init; }

    /// <summary>At most two reasons for the leader against the runner-up, the weightiest first.</summary>
    public required ImmutableArray<string> Reasons { get; init; }

    /// <summary>The strongest argument for the runner-up; never left out.</summary>
    public required string Against { get; init; }

    /// <summary>What weight would change the answer.</summary>
    public required string Change { get; init; }

    /// <summary>What is least sure.</summary>
    public required string Doubt { get; init; }

    /// <summary>Explains an answer.</summary>
    public static Explanation Of(ChoiceAnswer answer)
    {
        var pair = new Pair(answer, answer.Ranking.Leader, answer.RunnerUp);
        return new Explanation
        {
            Verdict = VerdictOf(answer),
            Reasons = pair.Reasons(MostReasons, Half),
            Against = pair.Against(),
            Change = Changes.Of(answer),
            Doubt = Doubts.Of(answer),
        };
    }

    private static string VerdictOf(ChoiceAnswer answer)
    {
        var (first, next) = (answer.Leader.Source.Mention, answer.RunnerUpCandidate.Source.Mention);
        if (answer.Ranking.IsTied)
        {
            var tied = answer
                .Ranking.Standings.Where(standing => standing.Place == 1)
                .Select(standing => answer.Candidates[standing.Candidate].Source.Mention);
            return $"First, and level: {NumberWords.List([.. tied])}.";
        }

        return answer.LeadIsClear
            ? $"First, {answer.ClosenessWords}: {first}. Next: {next}."
            : $"First by the figures: {first}; but there is {Closeness.NotClear} between this and {next}, which is next.";
    }
}
