using System.Collections.Immutable;
using System.Globalization;

namespace Passagework.Notation;

/// <summary>What is said between the beats when counting aloud.</summary>
/// <remarks>
/// Entry n holds what is said at the 1st to the (n − 1)th of n equal parts of a beat; an empty text leaves a part
/// silent. The beat itself is said as its number. Parts without an entry are silent.
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

    /// <summary>What is said at one part of a beat.</summary>
    /// <param name="beat">Number of the beat in its bar, from 1.</param>
    /// <param name="part">Which of the parts, from 0, the beat itself.</param>
    /// <param name="parts">Equal parts of the beat.</param>
    public string At(int beat, int part, int parts)
    {
        if (part == 0)
        {
            return beat.ToString(CultureInfo.InvariantCulture);
        }

        return ByParts.TryGetValue(parts, out var said) && part <= said.Length ? said[part - 1] : "";
    }
}
