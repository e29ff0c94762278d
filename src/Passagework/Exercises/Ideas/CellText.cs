using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Exercises.Ideas;

/// <summary>The notes of a cell as teachers write them: 1 for its start, 2 for the next note of the layout.</summary>
internal static class CellText
{
    /// <summary>How a rest is written.</summary>
    public const string Rest = "–";

    // Half a layout each way is more than any figure needs (chosen by us).
    private const int Furthest = 99;

    /// <summary>Such as <c>1 2 5 –</c>; notes below the start are 0, −1 and so on.</summary>
    public static string Of(ImmutableArray<int?> offsets) =>
        offsets.Select(offset => offset is { } steps ? AxisText.Of(steps + 1) : Rest).Join(" ");

    /// <summary>Reads it; a rest may also be a hyphen or the letter r.</summary>
    public static Outcome<ImmutableArray<int?>> Read(string text) =>
        TypedText.Each<int?>(
            text,
            word =>
                word is Rest or "-" or "r"
                    ? (int?)null
                    : TypedText
                        .Whole(word.Replace('−', '-'), -Furthest, Furthest)
                        .Then<int?>(note => (int?)(note - 1))
        );
}
