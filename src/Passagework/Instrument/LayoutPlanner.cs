using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Instrument;

/// <summary>Lays a note set on the neck: from a layout to the path that an exercise moves along.</summary>
/// <example>
/// Box 1 of A minor pentatonic near fret 5 begins <c>6:5 6:8 5:5 5:7</c>.
/// </example>
public static class LayoutPlanner
{
    /// <summary>The notes of a layout in order.</summary>
    /// <remarks>
    /// Everything is read as if the capo were the nut. The place of a fault is a field of the layout, such as
    /// <c>.number</c>; it is empty when the whole layout is meant.
    /// </remarks>
    public static Outcome<Path> Lay(Layout layout, NoteSet notes, Fretboard fretboard)
    {
        if (LayoutRules.Check(layout) is { } outOfRange)
        {
            return outOfRange;
        }

        var scale = new ScaleOnNeck(notes, fretboard);
        var spots = layout switch
        {
            Layout.Box box => BoxPlacer
                .Nearest(scale, box.Number, box.Near, ".number")
                .Then(laid => Found(laid.Spots)),
            Layout.OneSide side => BoxLayouts.OneSide(scale, side),
            Layout.Joined joined => BoxLayouts.Joined(scale, joined),
            Layout.StringPair pair => BoxLayouts.Blocks(scale, pair.Strings, pair.Boxes, pair.Near),
            Layout.Chain chain => BoxLayouts.Blocks(scale, chain.Strings, chain.Boxes, chain.Near),
            Layout.PerString even => StringLayouts.Run(scale, even.From, [even.Count]),
            Layout.Diagonal diagonal => StringLayouts.Run(scale, diagonal.From, diagonal.Pattern.AsSpan()),
            Layout.OneString single => StringLayouts.OneString(scale, single),
            Layout.OpenPosition => StringLayouts.Open(scale),
            Layout.Given given => StringLayouts.Given(scale, given),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        return spots.Then(found => OnNeck(scale, found));
    }

    private static Outcome<List<Spot>> Found(List<Spot> spots) => spots;

    private static Outcome<Path> OnNeck(ScaleOnNeck scale, List<Spot> spots)
    {
        var below = spots.FindIndex(spot => spot.Fret < 0);
        if (below >= 0)
        {
            return new Fault(
                $"on string {spots[below].String} a note would lie below the nut",
                Right: "begin higher, or take fewer notes on each string"
            );
        }

        var highest = spots.MaxBy(spot => spot.Fret);
        if (highest.Fret > scale.Frets)
        {
            return new Fault(
                $"needs fret {highest.Fret} on string {highest.String}, and {scale.NeckEnd}",
                Right: "begin lower on the neck"
            );
        }

        return new Path([.. spots.Select(spot => Place.At(spot.String, spot.Fret))]);
    }
}
