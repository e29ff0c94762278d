using System.CommandLine;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Notation;

namespace Passagework.Cli.Commands;

/// <summary><c>import FILE</c>: text tab to an exercise file; what was guessed is said on standard error.</summary>
internal static class ImportCommand
{
    public static Command Create(Terminal terminal)
    {
        var file = new Argument<string>("file") { Description = "Text tab, or - for standard input." };
        var output = Arguments.OutputFile();
        var command = new Command("import", "Reads text tab into an exercise file.") { file, output };
        command.SetAction(parsed =>
            InputFile
                .ReadText(parsed.GetValue(file) ?? "", terminal)
                .Then(text => TextTab.Read(text))
                .Then(Playable)
                .Then<string>(import =>
                {
                    foreach (var warning in import.Warnings)
                    {
                        terminal.Error.WriteLine($"note: {warning}");
                    }

                    return RecipeJson.Write(import.Recipe);
                })
                .Finish(terminal, parsed.GetValue(output))
        );
        return command;
    }

    // A line that no hand can finger is said at once, not when it is first used.
    private static Outcome<TabImport> Playable(TabImport import) =>
        LineBuilder
            .Build(import.Recipe)
            .Then(line => Realizer.Realize(line, Player.At(2)))
            .Then<TabImport>(_ => import);
}
