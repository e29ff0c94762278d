using System.CommandLine;
using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Cli;

/// <summary>Arguments and options that several commands share.</summary>
internal static class Arguments
{
    public static Argument<string> Exercise() =>
        new("exercise") { Description = "An id of the shelf, an exercise file, or - for standard input." };

    public static Option<bool> Json() => new("--json") { Description = "Print JSON for machines." };

    public static Option<string?> OutputFile() =>
        new("--output", "-o") { Description = "Write to this file.", HelpName = "FILE" };

    public static Option<string> PlayerOption() =>
        new("--player")
        {
            Description =
                "For whom: beginner, elementary, intermediate, advanced, expert, 0 to 4, or a player file.",
            HelpName = "LEVEL|FILE",
            DefaultValueFactory = _ => "intermediate",
        };

    public static Option<string?> Text(string name, string description, string value) =>
        new(name) { Description = description, HelpName = value };

    /// <summary>One word of a list; the list's first where nothing was asked.</summary>
    public static Outcome<T> Word<T>(WordList<T> words, Option<string?> option, ParseResult parsed)
        where T : struct
    {
        if (parsed.GetValue(option) is not { } text)
        {
            return default(T);
        }

        return words.Read(text).TryGet(out var value, out var fault)
            ? value
            : fault with
            {
                Where = option.Name,
            };
    }

    /// <summary>A whole number within limits; the usual one where nothing was asked.</summary>
    /// <param name="option">The option.</param>
    /// <param name="parsed">What was typed.</param>
    /// <param name="limits">The least and the most that may be asked.</param>
    /// <param name="usual">The number where nothing was asked.</param>
    /// <param name="wrong">What is said of any other, such as "is out of range".</param>
    public static Outcome<int> Whole(
        Option<string?> option,
        ParseResult parsed,
        (int Least, int Most) limits,
        int usual,
        string wrong
    )
    {
        if (parsed.GetValue(option) is not { } text)
        {
            return usual;
        }

        return IsWhole(text, out var number) && number >= limits.Least && number <= limits.Most
            ? number
            : new Fault(
                $"{Quote.Short(text)} {wrong}",
                option.Name,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"a whole number from {limits.Least} to {limits.Most}"
                )
            );
    }

    /// <summary>Whether a text is a whole number not below 0, written in digits alone.</summary>
    public static bool IsWhole(string text, out int number) =>
        int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out number);
}
