using Passagework.Exercises;

namespace Passagework.Hands;

/// <summary>What kind of change two strokes of a plectrum make.</summary>
public enum ChangeKind
{
    /// <summary>The string stays.</summary>
    SameString,

    /// <summary>Up on the string nearer the ceiling, down on the other, in either order: between the pair.</summary>
    Inside,

    /// <summary>Down on the string nearer the ceiling, up on the other, in either order: round the pair.</summary>
    Outside,

    /// <summary>The same stroke twice, in the direction of the crossing.</summary>
    SweepStep,

    /// <summary>The same stroke twice, against the crossing.</summary>
    Against,
}

/// <summary>A change from one struck note to the next, by physical string order.</summary>
/// <param name="Kind">How the strokes go with the crossing.</param>
/// <param name="Distance">Strings apart; 0 on the same string.</param>
internal readonly record struct StrokeChange(ChangeKind Kind, int Distance)
{
    /// <summary>The change between two strokes of a plectrum, from the string where the one ends to where the other begins.</summary>
    public static StrokeChange Of(StrokeState from, StrokeState to)
    {
        var distance = Math.Abs(from.Exit - to.Entry);
        if (distance == 0)
        {
            return new StrokeChange(ChangeKind.SameString, 0);
        }

        if (from.Action == to.Action)
        {
            // A down-stroke goes towards the floor, that is towards the lower string numbers.
            var along = (to.Action == Stroke.Down) == (to.Entry < from.Exit);
            return new StrokeChange(along ? ChangeKind.SweepStep : ChangeKind.Against, distance);
        }

        var nearCeiling = from.Exit > to.Entry ? from.Action : to.Action;
        return new StrokeChange(nearCeiling == Stroke.Up ? ChangeKind.Inside : ChangeKind.Outside, distance);
    }
}
