using System.Collections.Immutable;
using System.Globalization;
using Passagework.Rhythm;

namespace Passagework.Notation;

/// <summary>What is said between the beats when counting aloud.</summary>
/// <remarks>
/// Entry n holds what is said at the 1st to the (n − 1)th of n equal parts of a beat; an empty text leaves a part
/// silent. The beat itself is said as its number unless it has a syllable of its own. Parts without an entry are silent.
/// </remarks>
public sealed record CountSyllables(ImmutableDictionary<int, ImmutableArray<string>> ByParts)
{
    /// <summary>Most equal parts of a beat that are counted.</summary>
    public const int MostParts = 8;

    /// <summary><c>1 &amp;</c>, <c>1 trip let</c>, <c>1 e &amp; a</c>, fives and sevens by number, six as two triplets (common practice).</summary>
    public static CountSyllables Common { get; } =
        new(
            new Dictionary<int, ImmutableArray<string>>
            {
                [2] = ["&"],
                [3] = ["trip", "let"],
                [4] = ["e", "&", "a"],
                [5] = ["2", "3", "4", "5"],
                [6] = ["trip", "let", "&", "trip", "let"],
                [7] = ["2", "3", "4", "5", "6", "7"],
                [8] = ["", "e", "", "&", "", "a", ""],
            }.ToImmutableDictionary()
        );

    /// <summary><c>1 te</c>, <c>1 la li</c>, <c>1 ti te ta</c>, six as <c>1 ta la ta li ta</c> (common practice).</summary>
    public static CountSyllables LaLi { get; } =
        new(
            Common
                .ByParts.SetItem(2, ["te"])
                .SetItem(3, ["la", "li"])
                .SetItem(4, ["ti", "te", "ta"])
                .SetItem(6, ["ta", "la", "ta", "li", "ta"])
                .SetItem(8, ["", "ti", "", "te", "", "ta", ""])
        );

    /// <summary><c>ta di</c>, <c>ta ki da</c>, <c>ta ka di mi</c>, six as <c>ta va ki di da ma</c> (common practice).</summary>
    public static CountSyllables TaKa { get; } =
        new(
            Common
                .ByParts.SetItem(2, ["di"])
                .SetItem(3, ["ki", "da"])
                .SetItem(4, ["ka", "di", "mi"])
                .SetItem(6, ["va", "ki", "di", "da", "ma"])
                .SetItem(8, ["", "ka", "", "di", "", "mi", ""])
        )
        {
            OnTheBeat = "ta",
        };

    /// <summary>The number of each beat and nothing between.</summary>
    public static CountSyllables BeatsOnly { get; } =
        new(ImmutableDictionary<int, ImmutableArray<string>>.Empty);

    /// <summary>What is said on every beat; null for its number.</summary>
    public string? OnTheBeat { get; init; }

    /// <summary>Those of a room's way of counting.</summary>
    public static CountSyllables Of(Counting counting) =>
        counting switch
        {
            Counting.LaLi => LaLi,
            Counting.TaKa => TaKa,
            Counting.BeatsOnly => BeatsOnly,
            _ => Common,
        };

    /// <summary>What is said at one part of a beat.</summary>
    /// <param name="beat">Number of the beat in its bar, from 1.</param>
    /// <param name="part">Which of the parts, from 0, the beat itself.</param>
    /// <param name="parts">Equal parts of the beat.</param>
    public string At(int beat, int part, int parts)
    {
        if (part == 0)
        {
            return OnTheBeat ?? beat.ToString(CultureInfo.InvariantCulture);
        }

        return ByParts.TryGetValue(parts, out var said) && part <= said.Length ? said[part - 1] : "";
    }
}
