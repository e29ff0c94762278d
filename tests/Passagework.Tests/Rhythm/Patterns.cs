using Passagework.Rhythm;

namespace Passagework.Tests.Rhythm;

/// <summary>Patterns of published tables, by name.</summary>
internal static class Patterns
{
    public static OnsetPattern Named(string name) =>
        name switch
        {
            "shiko" => OnsetPattern.Of(16, 0, 4, 6, 10, 12),
            "son" => OnsetPattern.Of(16, 0, 3, 6, 10, 12),
            "rumba" => OnsetPattern.Of(16, 0, 3, 7, 10, 12),
            "soukous" => OnsetPattern.Of(16, 0, 3, 6, 10, 11),
            "gahu" => OnsetPattern.Of(16, 0, 3, 6, 10, 14),
            "bossa" => OnsetPattern.Of(16, 0, 3, 6, 10, 13),
            "tresillo" => OnsetPattern.Of(8, 0, 3, 6),
            "cinquillo" => OnsetPattern.Of(8, 0, 2, 3, 5, 6),
            "habanera" => OnsetPattern.Of(8, 0, 3, 4, 6),
            "off-beats" => OnsetPattern.Of(8, 1, 3, 5, 7),
            _ => throw new ArgumentException(name, nameof(name)),
        };

    /// <summary>The bar of a pattern of 8 or 16 pulses, which halves all the way down.</summary>
    public static MetricalTree Bar(OnsetPattern pattern) =>
        pattern.Pulses == 16 ? MetricalTree.Of(2, 2, 2, 2) : MetricalTree.Of(2, 2, 2);

    /// <summary>Pulses of a beat: 4 of 16, 2 of 8.</summary>
    public static int Beat(OnsetPattern pattern) => pattern.Pulses / 4;

    /// <summary>Written as x for struck and . for silent.</summary>
    public static OnsetPattern Box(string text) =>
        OnsetPattern.Of(
            text.Length,
            [.. Enumerable.Range(0, text.Length).Where(pulse => text[pulse] == 'x')]
        );
}
