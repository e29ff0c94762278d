using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Instrument;

/// <summary>The ranges of a layout's values, whatever the note set and the instrument.</summary>
internal static class LayoutRules
{
    /// <summary>A list of boxes, strings or counts holds at most this many entries (assumed by us).</summary>
    public const int LongestList = 64;

    /// <summary>Highest fret that may be written.</summary>
    public const int HighestFret = 36;

    /// <summary>The first value out of range; null when there is none.</summary>
    public static Fault? Check(Layout layout) =>
        layout switch
        {
            Layout.Box box => Near(box.Near),
            Layout.OneSide side => Near(side.Near),
            Layout.Joined joined => Near(joined.Near),
            Layout.StringPair pair => Near(pair.Near)
                ?? Count(pair.Strings, 2, 2, ".strings")
                ?? Count(pair.Boxes, 1, LongestList, ".boxes"),
            Layout.Chain chain => Near(chain.Near)
                ?? Count(chain.Strings, 1, 8, ".strings")
                ?? Count(chain.Boxes, 1, LongestList, ".boxes"),
            Layout.PerString even => Bounds.Within(even.Count, 2, 4, ".count"),
            Layout.Diagonal diagonal => Pattern(diagonal.Pattern),
            Layout.OneString single => Bounds.Within(single.From, 0, HighestFret, ".from")
                ?? Bounds.Within(single.To, 0, HighestFret, ".to"),
            _ => null,
        };

    private static Fault? Near(int near) => Bounds.Within(near, 0, HighestFret, ".near");

    private static Fault? Pattern(ImmutableArray<int> pattern) =>
        Count(pattern, 1, LongestList, ".pattern")
        ?? Bounds.Each(pattern, (count, index) => Bounds.Within(count, 1, 12, $".pattern[{index}]"));

    private static Fault? Count(ImmutableArray<int> list, int least, int most, string field) =>
        Bounds.Count(list.Length, least, most, field);
}
