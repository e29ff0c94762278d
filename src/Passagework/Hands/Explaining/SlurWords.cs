using Passagework.Exercises;

namespace Passagework.Hands.Explaining;

/// <summary>How a note is reached without a stroke.</summary>
internal static class SlurWords
{
    /// <summary>Hammered on where it rises or comes from another string, pulled off where it falls, slid by one finger.</summary>
    public static string Of(PlayedNote from, PlayedNote to) =>
        (from.Place.String == to.Place.String, to.Place.Fret.CompareTo(from.Place.Fret)) switch
        {
            (true, _) when from.Finger == to.Finger => "reached by a slide",
            (true, < 0) => "pulled off",
            _ => "hammered on",
        };
}
