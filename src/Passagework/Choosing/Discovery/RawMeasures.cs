using System.Collections.Immutable;

namespace Passagework.Choosing.Discovery;

/// <summary>What is measured of one candidate, before anchors and weights; null where there is nothing to measure.</summary>
/// <param name="EvenLoad">Balance of the hands times evenness over the fingers, at the student's level.</param>
/// <param name="GeneralUse">Harmonic mean of the share of its moves met in the repertoire and of the repertoire practised by it.</param>
/// <param name="StayingPower">Room left between beginner and expert.</param>
/// <param name="UseInMusic">Mass of its figures in the repertoire, lower bound.</param>
/// <param name="Ambiguity">Share of the places of the beat that its accents visit.</param>
/// <param name="ComesOutEven">Share of the usual feels in which it comes out within four bars.</param>
public readonly record struct RawMeasures(
    double? EvenLoad,
    double? GeneralUse,
    double? StayingPower,
    double? UseInMusic,
    double? Ambiguity,
    double? ComesOutEven
)
{
    /// <summary>Ids of the criteria in the order of the parameters.</summary>
    public static ImmutableArray<string> Criteria { get; } =
    [.. Measures.Criteria.All.Select(criterion => criterion.Id)];

    /// <summary>The measure of a criterion, by its place in <see cref="Criteria"/>.</summary>
    public double? this[int criterion] =>
        criterion switch
        {
            0 => EvenLoad,
            1 => GeneralUse,
            2 => StayingPower,
            3 => UseInMusic,
            4 => Ambiguity,
            5 => ComesOutEven,
            _ => throw new ArgumentOutOfRangeException(nameof(criterion)),
        };
}
