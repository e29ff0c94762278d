using System.Collections.Immutable;
using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Exercises;

/// <summary>Numbers as people type them; a fault says what would fit.</summary>
internal static class TypedText
{
    /// <summary>One whole number.</summary>
    public static Outcome<int> Whole(string text, int least, int most) =>
        int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var number)
        && number >= least
        && number <= most
            ? number
            : Unread(text, "number", $"a whole number from {least} to {most}");

    /// <summary>At least one whole number, with spaces or commas between.</summary>
    public static Outcome<ImmutableArray<int>> Wholes(string text, int least, int most) =>
        Each(text, word => Whole(word, least, most));

    /// <summary>One number; decimals after a point.</summary>
    public static Outcome<double> Number(string text, double least, double most) =>
        double.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
        && number >= least
        && number <= most
            ? number
            : Unread(
                text,
                "number",
                System.FormattableString.Invariant($"a number from {least} to {most}, decimals after a point")
            );

    /// <summary>At least one exact number such as <c>1/8</c> or <c>2</c>, with spaces or commas between.</summary>
    public static Outcome<ImmutableArray<Fraction>> Fractions(string text) =>
        Each<Fraction>(
            text,
            word =>
                Fraction.TryParse(word, out var fraction)
                    ? fraction
                    : Unread(word, "length", "whole numbers or fractions such as 1/8")
        );

    /// <summary>A share as a fraction or with decimals, such as <c>2/3</c> and <c>0.6</c>; null for anything else.</summary>
    public static Fraction? Share(string text)
    {
        if (Fraction.TryParse(text, out var fraction))
        {
            return fraction;
        }

        var decimals = text.StartsWith("0.", StringComparison.Ordinal) ? text[2..] : "";
        return decimals.Length is >= 1 and <= 9 && decimals.All(char.IsAsciiDigit)
            ? Fraction.Of(
                long.Parse(decimals, CultureInfo.InvariantCulture),
                (long)Math.Pow(10, decimals.Length)
            )
            : null;
    }

    /// <summary>The words of a list.</summary>
    public static string[] Words(string text) =>
        text.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries);

    /// <summary>Every word of a list read by itself; at least one.</summary>
    public static Outcome<ImmutableArray<T>> Each<T>(string text, Func<string, Outcome<T>> read)
    {
        var all = ImmutableArray.CreateBuilder<T>();
        foreach (var word in Words(text))
        {
            if (!read(word).TryGet(out var one, out var fault))
            {
                return fault;
            }

            all.Add(one);
        }

        return all.Count > 0 ? all.ToImmutable() : new Fault("nothing is written", Right: "at least one");
    }

    /// <summary>A text that is not what it should be.</summary>
    public static Fault Unread(string text, string kind, string right) =>
        new($"{Quote.Short(text)} is no {kind} that fits", Right: right);
}
