using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Exercises.Ideas;

/// <summary>Choices and texts in short.</summary>
internal static class AxisText
{
    /// <summary>A number as text.</summary>
    public static string Of(int number) => number.ToString(CultureInfo.InvariantCulture);

    /// <summary>A number with decimals as text.</summary>
    public static string Of(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>The parts with something between.</summary>
    public static string Join<T>(this IEnumerable<T> parts, string between) =>
        string.Join(between, parts.Select(part => string.Create(CultureInfo.InvariantCulture, $"{part}")));

    /// <summary>Whole numbers from one to another as choices.</summary>
    public static IEnumerable<AxisChoice> Range(int first, int last, Func<int, string> words) =>
        last < first
            ? []
            : Enumerable.Range(first, last - first + 1).Select(number => Choice(number, words(number)));

    /// <summary>A number with its words.</summary>
    public static AxisChoice Choice(int number, string words) => new(Of(number), words);

    /// <summary>The values of a word list, each with its words for the page.</summary>
    public static IEnumerable<AxisChoice> Listed<T>(WordList<T> list, Func<T, string> words)
        where T : struct => list.Words.Select(word => new AxisChoice(word, words(list.Read(word).OrThrow())));

    /// <summary>The choices with further ones put where they belong by number; none twice.</summary>
    public static IEnumerable<int> With(this IEnumerable<int> numbers, int? present) =>
        present is { } number ? numbers.Append(number).Distinct().Order() : numbers;
}
