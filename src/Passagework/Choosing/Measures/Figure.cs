using System.Collections.Immutable;

namespace Passagework.Choosing.Measures;

/// <summary>What one candidate measures on one criterion, with what it would measure if what was assumed were a little different.</summary>
/// <param name="Raw">In the criterion's own unit; null where it can't be measured.</param>
/// <param name="Draws">
/// <see cref="DrawCount"/> values under other plausible hands or other music; empty for an exact figure and for a missing one.
/// </param>
public sealed record Figure(double? Raw, ImmutableArray<double> Draws)
{
    /// <summary>Draws of every figure that is not exact.</summary>
    public const int DrawCount = 200;

    /// <summary>Nothing to measure.</summary>
    public static Figure Missing { get; } = new(null, []);

    /// <summary>A figure without an error; null stays missing.</summary>
    public static Figure Exact(double? raw) => new(raw, []);

    /// <summary>Standard deviation of the draws; 0 for an exact figure.</summary>
    public double Error => Spread.Of(Draws);

    /// <summary>The value under one draw.</summary>
    /// <exception cref="InvalidOperationException">The figure is missing.</exception>
    public double At(int draw) =>
        Draws.IsEmpty
            ? Raw ?? throw new InvalidOperationException("A missing figure has no draws.")
            : Draws[draw];

    /// <summary>The mean of several, draw by draw; missing where one of them is.</summary>
    public static Figure Mean(IReadOnlyCollection<Figure> figures)
    {
        if (figures.Any(figure => figure.Raw is null))
        {
            return Missing;
        }

        var draws = figures.All(figure => figure.Draws.IsEmpty)
            ? []
            : Enumerable.Range(0, DrawCount).Select(d => figures.Average(figure => figure.At(d)));
        return new Figure(figures.Average(figure => figure.Raw), [.. draws]);
    }

    /// <summary>Content equality.</summary>
    public bool Equals(Figure? other) =>
        other is not null && Raw.Equals(other.Raw) && Draws.SequenceEqual(other.Draws);

    /// <inheritdoc/>
    public override int GetHashCode() => Raw.GetHashCode();
}
