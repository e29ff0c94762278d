using System.CommandLine;

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
}
