using System.Collections.Immutable;

namespace Passagework.Choosing.Explaining;

/// <summary>Why one candidate and not another, criterion by criterion.</summary>
/// <param name="First">Index of the one asked for.</param>
/// <param name="Second">Index of the other.</param>
/// <param name="Terms">Weight × difference of the values, in the order of the criteria; above 0 speaks for the first.</param>
/// <param name="Clear">Whether each difference is clear.</param>
/// <param name="Reasons">What speaks for the first, weightiest first.</param>
/// <param name="Against">The strongest argument for the second.</param>
/// <param name="ShareOfWeightings">Share of all weightings in which the first is ahead.</param>
public sealed record Comparison(
    int First,
    int Second,
    ImmutableArray<double> Terms,
    ImmutableArray<bool> Clear,
    ImmutableArray<string> Reasons,
    string Against,
    double ShareOfWeightings
)
{
    /// <summary>Compares two candidates of an answer.</summary>
    public static Comparison Of(ChoiceAnswer answer, int first, int second)
    {
        var pair = new Pair(answer, first, second);
        return new Comparison(
            first,
            second,
            Lead.Of(answer.Choice, first, second).Terms,
            [.. answer.Criteria.Select((_, k) => answer.IsClear(first, second, k))],
            pair.Reasons(answer.Criteria.Length, 1),
            pair.Against(),
            WeightingShares.Ahead(answer.Choice, first, second)
        );
    }
}
