using System.CommandLine;
using System.CommandLine.Help;
using Passagework.Cli.Commands;
using Passagework.Foundation;

namespace Passagework.Cli;

/// <summary>The command line: parses, calls one door of the engine, prints, and gives the exit code.</summary>
internal static class App
{
    /// <summary>Done.</summary>
    public const int Done = 0;

    /// <summary>Failed for a reason outside the question.</summary>
    public const int Failed = 1;

    /// <summary>Bad or impossible input, or usage.</summary>
    public const int BadInput = 2;

    /// <summary>Runs one command and returns its exit code; nothing is thrown.</summary>
    public static int Run(IReadOnlyList<string> args, Terminal terminal)
    {
        try
        {
            return Invoke(args, terminal);
        }
        catch (Exception broken) when (broken is IOException or UnauthorizedAccessException)
        {
            return Fail(terminal, OneLine(broken.Message), Failed);
        }
#pragma warning disable CA1031 // The edge of the program: whatever went wrong inside becomes one line, never a trace.
        catch (Exception broken)
#pragma warning restore CA1031
        {
            return Fail(terminal, $"internal error, please report it: {OneLine(broken.Message)}", Failed);
        }
        finally
        {
            terminal.Out.Flush();
            terminal.Error.Flush();
        }
    }

    /// <summary>Prints a fault as one line and gives the exit code for it.</summary>
    public static int Refuse(Terminal terminal, Fault fault) =>
        Fail(terminal, OneLine(fault.ToString()), BadInput);

    private static int Invoke(IReadOnlyList<string> args, Terminal terminal)
    {
        var root = new Command(
            "passagework",
            "What a technique exercise for fretted strings asks of each hand."
        )
        {
            new HelpOption(),
            new VersionOption(),
            ShelfCommand.Create(terminal),
            ShowCommand.Create(terminal),
            MeasureCommand.Create(terminal),
            ChooseCommand.Create(terminal),
            DiscoverCommand.Create(terminal),
            PrepareCommand.Create(terminal),
            ImportCommand.Create(terminal),
            SheetCommand.Create(terminal),
        };
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0)
        {
            return Fail(terminal, $"{Misused(root, parsed)}; see --help", BadInput);
        }

        var streams = new InvocationConfiguration
        {
            Output = terminal.Out,
            Error = terminal.Error,
            EnableDefaultExceptionHandler = false,
        };
        return parsed.Invoke(streams);
    }

    // The parser asks for a command where a wrong one was given; say which one was probably meant.
    private static string Misused(Command root, ParseResult parsed)
    {
        var word = parsed.UnmatchedTokens.FirstOrDefault("-");
        return parsed.CommandResult.Command == root && !word.StartsWith('-')
            ? new Fault(
                $"unknown command {Quote.Short(word)}",
                Right: NearestWord.Hint(word, [.. root.Subcommands.Select(command => command.Name)])
            ).ToString()
            : OneLine(parsed.Errors[0].Message).TrimEnd('.');
    }

    private static int Fail(Terminal terminal, string line, int code)
    {
        terminal.Error.WriteLine($"passagework: {line}");
        return code;
    }

    private static string OneLine(string text) => text.ReplaceLineEndings(" ").Trim();
}
