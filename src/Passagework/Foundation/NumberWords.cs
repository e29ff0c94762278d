using System.Collections.Immutable;
using System.Globalization;

namespace Passagework.Foundation;

/// <summary>Small numbers in words.</summary>
public static class NumberWords
{
    private static readonly ImmutableArray<string> Words =
    [
        "no",
        "one",
        "two",
        "three",
        "four",
        "five",
        "six",
        "seven",
        "eight",
        "nine",
        "ten",
        "eleven",
        "twelve",
    ];

    private static readonly ImmutableArray<string> Teens =
    [
        "thirteen",
        "fourteen",
        "fifteen",
        "sixteen",
        "seventeen",
        "eighteen",
        "nineteen",
    ];

    private static readonly ImmutableArray<string> Tens =
    [
        "twenty",
        "thirty",
        "forty",
        "fifty",
        "sixty",
        "seventy",
        "eighty",
        "ninety",
    ];

    /// <summary>Such as <c>five</c>; <c>no</c> for 0, figures beyond twelve.</summary>
    public static string Of(long number) =>
        number >= 0 && number < Words.Length
            ? Words[(int)number]
            : number.ToString(CultureInfo.InvariantCulture);

    /// <summary>In words up to ninety-nine, such as <c>thirty-two</c>, for the beginning of a sentence; figures beyond.</summary>
    public static string InFull(long number)
    {
        if (number < Words.Length || number > 99)
        {
            return Of(number);
        }

        if (number < 20)
        {
            return Teens[(int)number - Words.Length];
        }

        var (tens, ones) = ((int)number / 10, number % 10);
        return ones == 0 ? Tens[tens - 2] : $"{Tens[tens - 2]}-{Of(ones)}";
    }

    /// <summary>A number of times, such as <c>twice</c> and <c>four times</c>.</summary>
    public static string Times(long number) =>
        number switch
        {
            1 => "once",
            2 => "twice",
            _ => $"{Of(number)} times",
        };

    /// <summary>A number of things, such as <c>one bar</c> and <c>five bars</c>.</summary>
    public static string Of(long number, string thing) => $"{Of(number)} {thing}{(number == 1 ? "" : "s")}";

    /// <summary>Such as <c>four of seven</c>; both in figures where one is beyond twelve.</summary>
    public static string OutOf(long part, long all) =>
        all < Words.Length
            ? $"{Of(part)} of {Of(all)}"
            : string.Create(CultureInfo.InvariantCulture, $"{part} of {all}");

    /// <summary>A stretch of bars as numbered, such as <c>bar 3</c> and <c>bars 3 to 5</c>.</summary>
    public static string Bars(int first, int last) =>
        first == last
            ? string.Create(CultureInfo.InvariantCulture, $"bar {first}")
            : string.Create(CultureInfo.InvariantCulture, $"bars {first} to {last}");

    /// <summary>Such as <c>eighths, triplets and sixteenths</c>.</summary>
    public static string List(IReadOnlyList<string> names) =>
        names.Count < 2 ? string.Concat(names) : $"{string.Join(", ", names.SkipLast(1))} and {names[^1]}";

    /// <summary>The text with a capital first letter.</summary>
    public static string Sentence(string text) =>
        text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
