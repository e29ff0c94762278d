using System.Collections.Immutable;

namespace Passagework.Choosing;

/// <summary>A way to turn values and weights into one number a candidate.</summary>
public interface IRankingMethod
{
    /// <summary>The name it is asked for by.</summary>
    string Id { get; }

    /// <summary>One score a candidate, higher is better.</summary>
    ImmutableArray<double> Scores(Choice choice);
}

/// <summary>The methods there are; the first is the one used unless another is asked for.</summary>
public static class RankingMethods
{
    /// <summary>Weighted sum, TOPSIS, PROMETHEE II and AHP.</summary>
    public static ImmutableArray<IRankingMethod> All { get; } =
    [new WeightedSum(), new Topsis(), new Promethee(), new HierarchyProcess()];
}

/// <summary>Σ weight × value: the method whose parts can be told to a teacher.</summary>
public sealed class WeightedSum : IRankingMethod
{
    /// <inheritdoc/>
    public string Id => "weighted-sum";

    /// <inheritdoc/>
    public ImmutableArray<double> Scores(Choice choice) =>
        [.. Enumerable.Range(0, choice.Count).Select(choice.Score)];
}
