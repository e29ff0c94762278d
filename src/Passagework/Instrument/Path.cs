using System.Collections.Immutable;

namespace Passagework.Instrument;

/// <summary>The notes of a layout in order, each a place on the neck.</summary>
/// <param name="Places">In scale order from the lowest; never empty.</param>
public sealed record Path(ImmutableArray<Place> Places)
{
    /// <summary>Number of notes.</summary>
    public int Length => Places.Length;

    /// <summary>Content equality.</summary>
    public bool Equals(Path? other) => other is not null && Places.SequenceEqual(other.Places);

    /// <inheritdoc/>
    public override int GetHashCode() => Places.Length;

    /// <summary>The places in order, such as <c>6:5 6:8 5:5</c>.</summary>
    public override string ToString() => string.Join(' ', Places);
}
