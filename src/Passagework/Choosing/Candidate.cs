using System.Collections.Immutable;

namespace Passagework.Choosing;

/// <summary>What one candidate is worth on one criterion.</summary>
/// <param name="Value">0 (worst) to 1 (best); null where it can't be measured.</param>
/// <param name="Error">Standard deviation of the value; 0 where it is exact, and where it is missing.</param>
public readonly record struct Mark(double? Value, double Error = 0);

/// <summary>One of the things to choose from.</summary>
/// <param name="Id">Its name, unlike any other's.</param>
/// <param name="Marks">One per criterion, in the order of the criteria.</param>
public sealed record Candidate(string Id, ImmutableArray<Mark> Marks)
{
    /// <summary>Candidates of one family share one place, so that its forms do not split a share; its own name where there is none.</summary>
    public string Family { get; init; } = Id;
}
