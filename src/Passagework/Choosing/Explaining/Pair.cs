using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Choosing.Explaining;

/// <summary>Two candidates side by side: what speaks for the first, what for the second.</summary>
/// <param name="answer">Where they were ranked.</param>
/// <param name="first">Index of the one argued for.</param>
/// <param name="second">Index of the other.</param>
internal sealed class Pair(ChoiceAnswer answer, int first, int second)
{
    private readonly ImmutableArray<double> _terms = Lead.Of(answer.Choice, first, second).Terms;

    /// <summary>
    /// The largest clear differences for the first, so many at most, until together they are more than a share of all that
    /// speaks for it.
    /// </summary>
    public ImmutableArray<string> Reasons(int most, double share)
    {
        var all = _terms.Where(term => term > 0).Sum();
        var clear = Ordered(term => term).Where(k => answer.IsClear(first, second, k)).ToList();
        var told = 0.0;
        var reasons = ImmutableArray.CreateBuilder<string>();
        foreach (var k in clear.TakeWhile(_ => reasons.Count < most && told <= share * all))
        {
            reasons.Add(Sentence(k, first, second));
            told += _terms[k];
        }

        return reasons.Count > 0 ? reasons.ToImmutable() : [NoneClear()];
    }

    private string NoneClear()
    {
        var ahead = Ordered(term => term).Select(k => answer.Criteria[k].Title).ToList();
        if (ahead.Count > 0)
        {
            var clearly = ahead.Count == 1 ? "not clearly" : "on none of them clearly";
            return $"By the figures it is ahead on {NumberWords.List(ahead)}, but {clearly}.";
        }

        var unknown = answer
            .Choice.Weights.Used.Where(k => _terms[k] > 0)
            .Select(k => answer.Criteria[k].Title)
            .ToList();
        return unknown.Count > 0
            ? $"It is ahead only because one of the two has no figure for {NumberWords.List(unknown)}."
            : "The two measure alike on everything that counts.";
    }

    /// <summary>The largest difference for the second, clear or not.</summary>
    public string Against()
    {
        var against = Ordered(term => -term).ToList();
        if (against.Count == 0)
        {
            return $"Nothing that counts speaks for {Mention(second)}.";
        }

        var k = against[0];
        return answer.IsClear(first, second, k)
            ? $"For {Mention(second)}: {Voice(k).Better(answer.Candidates[second], answer.Candidates[first])}."
            : $"On {answer.Criteria[k].Title}, {Mention(second)} would be ahead, but with {Closeness.NotClear}.";
    }

    // Criteria on which a side is ahead and both are measured, the weightiest first.
    private IEnumerable<int> Ordered(Func<double, double> gain) =>
        Enumerable
            .Range(0, _terms.Length)
            .Where(k =>
                gain(_terms[k]) > Ranking.Tolerance
                && !answer.Choice.Table.IsMissing(first, k)
                && !answer.Choice.Table.IsMissing(second, k)
            )
            .OrderByDescending(k => gain(_terms[k]));

    private string Sentence(int criterion, int better, int worse) =>
        NumberWords.Sentence(Voice(criterion).Better(answer.Candidates[better], answer.Candidates[worse]))
        + ".";

    private ICriterionVoice Voice(int criterion) => Voices.Of(answer.Criteria, criterion);

    private string Mention(int candidate) => answer.Candidates[candidate].Source.Mention;
}
