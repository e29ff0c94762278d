using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Hands.Explaining;

/// <summary>Places and strings of a move, in words.</summary>
internal static class PlaceWords
{
    /// <summary>Such as <c>4:5</c>, of a chord <c>2:5+3:5</c>.</summary>
    public static string Of(PlayedNote note) => string.Join('+', note.Tones.Select(tone => $"{tone.Place}"));

    /// <summary>Such as <c>4:5 to 6:8</c>.</summary>
    public static string Move(PlayedNote from, PlayedNote to) => $"{Of(from)} to {Of(to)}";

    /// <summary>How far apart two strings are: on one string, on the next string, over a skipped string.</summary>
    public static string Across(int from, int to) =>
        Math.Abs(from - to) switch
        {
            0 => " on one string",
            1 => " on the next string",
            2 => " over a skipped string",
            var apart => $" over {NumberWords.Of(apart - 1)} skipped strings",
        };
}
