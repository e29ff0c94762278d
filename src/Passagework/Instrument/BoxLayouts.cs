using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Instrument;

/// <summary>The layouts made of boxes: one side of a box, neighbours joined, boxes one after another.</summary>
internal static class BoxLayouts
{
    /// <summary>The lowest or the highest fret of every string of a box.</summary>
    public static Outcome<List<Spot>> OneSide(ScaleOnNeck scale, Layout.OneSide side) =>
        BoxPlacer
            .Nearest(scale, side.Number, side.Near, ".number")
            .Then<List<Spot>>(box =>
            {
                var ends = box
                    .Spots.GroupBy(spot => spot.String)
                    .Select(run => side.High ? run.MaxBy(spot => spot.Fret) : run.MinBy(spot => spot.Fret));
                return ends.ToList();
            });

    /// <summary>Two neighbouring boxes, string by string.</summary>
    public static Outcome<List<Spot>> Joined(ScaleOnNeck scale, Layout.Joined joined)
    {
        var next = (joined.First % scale.NoteCount) + 1;
        if (joined.Second != next && joined.First >= 1 && joined.First <= scale.NoteCount)
        {
            return new Fault(
                $"box {joined.Second} does not follow box {joined.First}",
                ".boxes",
                $"[{joined.First}, {next}]"
            );
        }

        return BoxPlacer
            .Upward(scale, [joined.First, joined.Second], joined.Near)
            .Then<List<Spot>>(boxes =>
                boxes
                    .SelectMany(box => box.Spots)
                    .Distinct()
                    .OrderByDescending(spot => spot.String)
                    .ThenBy(spot => spot.Fret)
                    .ToList()
            );
    }

    /// <summary>Boxes up the neck, of each only what lies on a few strings.</summary>
    public static Outcome<List<Spot>> Blocks(
        ScaleOnNeck scale,
        ImmutableArray<int> strings,
        ImmutableArray<int> numbers,
        int near
    )
    {
        if (StringLayouts.CheckStrings(scale, strings) is { } wrongString)
        {
            return wrongString;
        }

        return BoxPlacer.Upward(scale, numbers.AsSpan(), near).Then(boxes => OnStrings(boxes, strings));
    }

    private static Outcome<List<Spot>> OnStrings(List<LaidBox> boxes, ImmutableArray<int> strings)
    {
        var spots = boxes.SelectMany(box => box.Spots).Where(spot => strings.Contains(spot.String)).ToList();
        return spots.Count > 0
            ? spots
            : new Fault("the boxes have no notes on these strings", ".strings", "choose other strings");
    }
}
