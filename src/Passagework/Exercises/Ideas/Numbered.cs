using System.Collections.Immutable;
using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Exercises.Ideas;

/// <summary>Boxes and strings by their numbers.</summary>
internal static class Numbered
{
    /// <summary>Such as <c>box 1</c>, <c>boxes 1 and 3</c> and <c>boxes 1 to 5</c>.</summary>
    public static string Boxes(IReadOnlyList<string> numbers)
    {
        if (numbers.Count == 1)
        {
            return $"box {numbers[0]}";
        }

        var first = int.Parse(numbers[0], CultureInfo.InvariantCulture);
        var follow =
            numbers.Count > 2
            && numbers.Select((number, i) => number == AxisText.Of(first + i)).All(next => next);
        return follow ? $"boxes {numbers[0]} to {numbers[^1]}" : $"boxes {NumberWords.List(numbers)}";
    }

    /// <summary>Such as <c>string 6</c> and <c>strings 2 and 1</c>.</summary>
    public static string Strings(ImmutableArray<int> numbers) =>
        numbers.Length == 1
            ? $"string {AxisText.Of(numbers[0])}"
            : $"strings {NumberWords.List([.. numbers.Select(AxisText.Of)])}";
}
