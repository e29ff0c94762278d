using Passagework.Foundation;

namespace Passagework.Choosing;

/// <summary>A table with the weights to judge it by: a question that has an answer.</summary>
public sealed class Choice
{
    private Choice(ChoiceTable table, CriterionWeights weights)
    {
        Table = table;
        Weights = weights;
    }

    /// <summary>Candidates and their values.</summary>
    public ChoiceTable Table { get; }

    /// <summary>What counts how much.</summary>
    public CriterionWeights Weights { get; }

    /// <summary>Number of candidates.</summary>
    public int Count => Table.Candidates.Length;

    /// <summary>
    /// Puts the two together; refused where a criterion that counts is missing for everybody, or a candidate has
    /// none of the criteria that count.
    /// </summary>
    /// <exception cref="ArgumentException">The weights belong to another number of criteria.</exception>
    public static Outcome<Choice> Of(ChoiceTable table, CriterionWeights weights)
    {
        if (weights.Shares.Length != table.Criteria.Length)
        {
            throw new ArgumentException("One weight per criterion.", nameof(weights));
        }

        var candidates = Enumerable.Range(0, table.Candidates.Length);
        foreach (var k in weights.Used)
        {
            if (candidates.All(a => table.IsMissing(a, k)))
            {
                return new Fault(
                    "no candidate can be measured on this",
                    table.Criteria[k],
                    "a weight of 0, or other candidates"
                );
            }
        }

        foreach (var a in candidates)
        {
            if (weights.Used.All(k => table.IsMissing(a, k)))
            {
                return new Fault(
                    "none of the criteria that count can be measured",
                    table.Candidates[a].Id,
                    "leave it out, or weigh other criteria"
                );
            }
        }

        return new Choice(table, weights);
    }

    /// <summary>The weighted sum of one candidate's values.</summary>
    public double Score(int candidate) => Score(candidate, Weights.Shares.AsSpan());

    /// <summary>The weighted sum under other weights.</summary>
    internal double Score(int candidate, ReadOnlySpan<double> weights)
    {
        var sum = 0.0;
        for (var k = 0; k < weights.Length; k++)
        {
            sum += weights[k] * Table.Counted(candidate, k);
        }

        return sum;
    }
}
