using System.Collections.Immutable;
using Passagework.Choosing.Measures;
using Passagework.Foundation;

namespace Passagework.Choosing;

/// <summary>What a teacher wants of an exercise: which criteria count how much, from where to where, and marks of their own.</summary>
public sealed record Wishes
{
    /// <summary>Five criteria that count alike; coming out even does not count.</summary>
    public static Wishes Usual { get; } = new();

    /// <summary>Weights by criterion, in any proportion; one not named does not count. Empty for all alike.</summary>
    public ImmutableSortedDictionary<string, double> Weights { get; init; } =
        ImmutableSortedDictionary<string, double>.Empty;

    /// <summary>Criteria from the most to the least important, in place of weights; one not named does not count.</summary>
    public ImmutableArray<string> Order { get; init; } = [];

    /// <summary>Raw figures that are worth 0 and 1, in place of the built-in ones.</summary>
    public ImmutableSortedDictionary<string, Anchor> Anchors { get; init; } =
        ImmutableSortedDictionary<string, Anchor>.Empty;

    /// <summary>Further criteria, marked by hand: from 0 to 1 by exercise or family.</summary>
    public ImmutableSortedDictionary<string, ImmutableSortedDictionary<string, double>> Marks { get; init; } =
        ImmutableSortedDictionary<string, ImmutableSortedDictionary<string, double>>.Empty;

    /// <summary>Whether the teacher has named what counts.</summary>
    public bool AreNamed => !Weights.IsEmpty || !Order.IsEmpty;

    /// <summary>The six criteria and the teacher's own, in the order in which they are listed.</summary>
    public ImmutableArray<Criterion> Criteria =>
        [.. Measures.Criteria.All, .. Marks.Keys.Select(Criterion.Own)];

    /// <summary>
    /// The weights, in the order of the criteria. An order alone gives weights that fall by equal steps, for "about equal, in this
    /// order"; without either, all count alike but coming out even.
    /// </summary>
    /// <param name="criteria">The criteria.</param>
    /// <param name="without">Those of them that are not to count.</param>
    public Outcome<CriterionWeights> WeightsOf(
        ImmutableArray<Criterion> criteria,
        ImmutableArray<Criterion> without
    )
    {
        var falling = CriterionWeights.RankSum(Order.Length);
        return CriterionWeights.Of(
            [.. criteria.Select(criterion => criterion.Id)],
            [.. criteria.Select(criterion => without.Contains(criterion) ? 0 : Given(criterion.Id, falling))]
        );
    }

    private double Given(string id, ImmutableArray<double> falling)
    {
        if (!Order.IsEmpty)
        {
            var place = Order.IndexOf(id);
            return place < 0 ? 0 : falling[place];
        }

        if (!Weights.IsEmpty)
        {
            return Weights.GetValueOrDefault(id);
        }

        return id == Measures.Criteria.ComesOutEven.Id ? 0 : 1;
    }
}
