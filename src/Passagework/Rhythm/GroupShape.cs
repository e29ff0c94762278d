using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Rhythm;

/// <summary>One group of a line as rhythm sees it.</summary>
/// <param name="Pulses">Length in pulses, rests included, above 0.</param>
/// <param name="Notes">Notes in the group, rests left out.</param>
/// <param name="Accents">Accented places, in pulses from the start of the group; empty stands for the start.</param>
public sealed record GroupShape(Fraction Pulses, int Notes, ImmutableArray<Fraction> Accents)
{
    /// <summary>Content equality.</summary>
    public bool Equals(GroupShape? other) =>
        other is not null
        && (Pulses, Notes) == (other.Pulses, other.Notes)
        && Accents.SequenceEqual(other.Accents);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Pulses, Notes, Accents.Length);
}
