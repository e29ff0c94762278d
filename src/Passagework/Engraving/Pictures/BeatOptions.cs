using System.Collections.Immutable;
using Passagework.Rhythm;

namespace Passagework.Engraving.Pictures;

/// <summary>How a line is drawn against the beat.</summary>
public sealed record BeatOptions
{
    /// <summary>The feels drawn side by side, at least one; empty for the recipe's own alone.</summary>
    public ImmutableArray<Feel> Feels { get; init; } = [];

    /// <summary>The most beats drawn, at least 1; the rest of a longer round is told in the caption.</summary>
    public int MostBeats { get; init; } = 12;

    /// <summary>Two to six notes to a beat, straight, for all that an exercise can be played in.</summary>
    public static ImmutableArray<Feel> Plain { get; } =
    [new(2, default), new(3, default), new(4, default), new(5, default), new(6, default)];
}
