using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Rhythm;

/// <summary>Says in one sentence which parts of the beat accents visit and when the groups come home.</summary>
internal static class FitSentence
{
    /// <summary>
    /// Such as "accents visit every part of the beat; needs five bars to come home". Over the plain ways of dividing the
    /// beat: in two, three and four, a dotted beat in two, three and six; the bars are those of the slowest of them.
    /// </summary>
    public static string Of(Pass accents, int groupLength, Meter meter)
    {
        ImmutableArray<int> divisions = meter.IsCompound ? [2, 3, 6] : [2, 3, 4];
        var bars = divisions.Max(parts =>
            groupLength / WholeNumbers.Gcd(groupLength, parts * meter.BeatsPerBar)
        );
        var home =
            bars <= GroupFit.PhraseBars
                ? $"home within {NumberWords.Of(bars, "bar")}"
                : $"needs {NumberWords.Of(bars, "bar")} to come home";
        return $"accents visit {Parts(accents, divisions, meter)}; {home}";
    }

    private static string Parts(Pass accents, ImmutableArray<int> divisions, Meter meter)
    {
        // 0 stands for every part, so that it is said first.
        var said = divisions
            .Select(parts => (Parts: parts, Visited: accents.PlacesVisited(parts)))
            .GroupBy(
                pair => pair.Visited == pair.Parts ? 0 : pair.Visited,
                pair => FeelNames.Of(pair.Parts, meter)
            )
            .OrderBy(group => group.Key)
            .ToImmutableArray();
        var first = said[0].Key switch
        {
            0 => "every part of the beat",
            1 => "one part of the beat",
            var more => $"{NumberWords.Of(more)} parts of the beat",
        };
        return said.Length == 1
            ? first
            : $"{first} in {NumberWords.List([.. said[0]])}"
                + string.Concat(
                    said.Skip(1)
                        .Select(group => $", {NumberWords.Of(group.Key)} in {NumberWords.List([.. group])}")
                );
    }
}
