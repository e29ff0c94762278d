namespace Passagework.Studio.Features.Sound;

/// <summary>What the browser needs to play a sound and to show where it is.</summary>
public sealed record SoundHandle
{
    /// <summary>Its name in the addresses of its samples and times.</summary>
    public required string Id { get; init; }

    /// <summary>Samples a second.</summary>
    public required int SampleRate { get; init; }

    /// <summary>Samples to its end.</summary>
    public required long Samples { get; init; }

    /// <summary>First sample of the repeated part; null for a sound that ends.</summary>
    public required long? RepeatFrom { get; init; }

    /// <summary>The sample after the repeated part.</summary>
    public required long? RepeatTo { get; init; }

    /// <summary>Bar of each note of the line, from 0.</summary>
    public required IReadOnlyList<int> NoteBars { get; init; }

    /// <summary>Places of each note of the line, such as <c>6:5</c>.</summary>
    public required IReadOnlyList<string[]> NotePlaces { get; init; }

    /// <summary>First bar that is played; null when all are.</summary>
    public required int? FirstBar { get; init; }

    /// <summary>Last bar that is played; null when all are.</summary>
    public required int? LastBar { get; init; }

    /// <summary>
    /// Counts how often the notes of the page have changed: between sounds of one number one can take over from the other
    /// at any beat, else at a bar line.
    /// </summary>
    public required int Music { get; init; }
}
