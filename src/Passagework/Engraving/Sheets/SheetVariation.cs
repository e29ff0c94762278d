using Passagework.Exercises;

namespace Passagework.Engraving.Sheets;

/// <summary>An exercise with one thing changed, written out where a sheet has room for it.</summary>
/// <param name="Words">What is changed, in a sentence.</param>
/// <param name="Played">What is played.</param>
public sealed record SheetVariation(string Words, Realization Played)
{
    /// <summary>Content equality.</summary>
    public bool Equals(SheetVariation? other) =>
        other is not null && Words == other.Words && Played.Notes.SequenceEqual(other.Played.Notes);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Words, Played.Notes.Length);
}
