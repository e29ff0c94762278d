using Passagework.Foundation;

namespace Passagework.Exercises.Ideas;

/// <summary>What is fixed about a note, in words.</summary>
internal static class LockWords
{
    /// <summary>Such as <c>note 8: finger 3, up-stroke</c>; notes counted from 1.</summary>
    public static string Of(Lock held)
    {
        var parts = new[]
        {
            held.Finger is { } finger ? Finger(finger) : "",
            held.String is { } number ? $"string {number}" : "",
            held.Position is { } position ? $"position {position}" : "",
            held.Stroke is { } stroke ? Stroked(stroke) : "",
        };
        return $"note {AxisText.Of(held.Note + 1)}: {string.Join(", ", parts.Where(part => part.Length > 0))}";
    }

    private static string Finger(int finger) => finger == 0 ? "open string" : $"finger {AxisText.Of(finger)}";

    private static string Stroked(Stroke stroke) =>
        stroke switch
        {
            Stroke.None => "slurred",
            Stroke.Down => "down-stroke",
            Stroke.Up => "up-stroke",
            _ => $"plucked with {RecipeWords.Strokes.Of(stroke)}",
        };
}
