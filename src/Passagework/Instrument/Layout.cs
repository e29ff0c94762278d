using System.Collections.Immutable;

namespace Passagework.Instrument;

/// <summary>How a note set lies on the neck. Each kind is a case; laying one out gives a path.</summary>
public abstract record Layout
{
    private protected Layout() { }

    /// <summary>Box <paramref name="Number"/> of the note set, at the place nearest to a fret.</summary>
    /// <param name="Number">1 to the number of notes in the set: which scale note the lowest string begins with.</param>
    /// <param name="Near">The fret that the box lies nearest to; a tie goes to the lower place.</param>
    public sealed record Box(int Number, int Near) : Layout;

    /// <summary>Unbroken scale order with the same count of notes on every string.</summary>
    /// <param name="Count">2 to 4.</param>
    /// <param name="From">Place of the first note; lower-sounding strings stay unused.</param>
    public sealed record PerString(int Count, Place From) : Layout;

    /// <summary>Two neighbouring boxes together: each string holds the notes of both.</summary>
    public sealed record Joined(int First, int Second, int Near) : Layout;

    /// <summary>Unbroken scale order with a repeated pattern of notes per string.</summary>
    public sealed record Diagonal(ImmutableArray<int> Pattern, Place From) : Layout
    {
        /// <inheritdoc/>
        public bool Equals(Diagonal? other) =>
            other is not null && From == other.From && Pattern.SequenceEqual(other.Pattern);

        /// <inheritdoc/>
        public override int GetHashCode() => HashCode.Combine(From, Pattern.Length);
    }

    /// <summary>All notes of the set on one string between two frets, both included.</summary>
    public sealed record OneString(int String, int From, int To) : Layout;

    /// <summary>One box on two strings only.</summary>
    public sealed record StringPair(ImmutableArray<int> Strings, ImmutableArray<int> Boxes, int Near) : Layout
    {
        /// <inheritdoc/>
        public bool Equals(StringPair? other) =>
            other is not null
            && Near == other.Near
            && Strings.SequenceEqual(other.Strings)
            && Boxes.SequenceEqual(other.Boxes);

        /// <inheritdoc/>
        public override int GetHashCode() => HashCode.Combine(Near, Strings.Length, Boxes.Length);
    }

    /// <summary>Several boxes one after another, each on the same few strings, climbing the neck.</summary>
    public sealed record Chain(ImmutableArray<int> Strings, ImmutableArray<int> Boxes, int Near) : Layout
    {
        /// <inheritdoc/>
        public bool Equals(Chain? other) =>
            other is not null
            && Near == other.Near
            && Strings.SequenceEqual(other.Strings)
            && Boxes.SequenceEqual(other.Boxes);

        /// <inheritdoc/>
        public override int GetHashCode() => HashCode.Combine(Near, Strings.Length, Boxes.Length);
    }

    /// <summary>The lower or the higher fret of every string of a box.</summary>
    public sealed record OneSide(bool High, int Number, int Near) : Layout;

    /// <summary>Open position: the notes at frets 0 to 4, leaving out those the next string has open or above.</summary>
    public sealed record OpenPosition : Layout;

    /// <summary>Any path, given place by place.</summary>
    public sealed record Given(ImmutableArray<Place> Places) : Layout
    {
        /// <inheritdoc/>
        public bool Equals(Given? other) => other is not null && Places.SequenceEqual(other.Places);

        /// <inheritdoc/>
        public override int GetHashCode() => Places.Length;
    }
}
