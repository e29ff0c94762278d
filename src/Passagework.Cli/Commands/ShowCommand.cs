using System.CommandLine;
using System.Text.Json.Nodes;
using Passagework.Cli.Output;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Notation;

namespace Passagework.Cli.Commands;

/// <summary><c>show EX --as tab|json</c>: writes an exercise out.</summary>
internal static class ShowCommand
{
    private static readonly WordList<bool> Forms = new("form", ("tab", false), ("json", true));

    public static Command Create(Terminal terminal)
    {
        var exercise = Arguments.Exercise();
        var form = Arguments.Text("--as", "tab (text, the default), or json (the idea as a file).", "FORM");
        var player = Arguments.PlayerOption();
        var json = Arguments.Json();
        var output = Arguments.OutputFile();
        var command = new Command("show", "Writes an exercise out with fingers and strokes.")
        {
            exercise,
            form,
            player,
            json,
            output,
        };
        var overrides = new Overrides(command);
        command.SetAction(parsed =>
            PlayerSource
                .Find(parsed.GetValue(player) ?? "", terminal)
                .Then(who =>
                    ExerciseSource
                        .Find(parsed.GetValue(exercise) ?? "", terminal)
                        .Then(source =>
                            overrides
                                .Apply(source.Recipe, parsed)
                                .Then(recipe => Planned(recipe, who.Player))
                                .Then(played =>
                                    parsed.GetValue(json)
                                        ? ForMachines(source.Name, played)
                                        : Written(played, parsed.GetValue(form) ?? "tab")
                                )
                        )
                )
                .Finish(terminal, parsed.GetValue(output))
        );
        return command;
    }

    private static Outcome<Realization> Planned(Recipe recipe, Player player) =>
        LineBuilder.Build(recipe).Then(line => Realizer.Realize(line, player));

    private static Outcome<string> ForMachines(string name, Realization played) =>
        JsonPage.Print(
            new JsonObject
            {
                ["exercise"] = name,
                ["idea"] = JsonNode.Parse(RecipeJson.Write(played.Line.Recipe)),
                ["notes"] = MeasurementJson.Notes(played),
            }
        );

    private static Outcome<string> Written(Realization played, string form) =>
        Forms.Read(form).TryGet(out var asJson, out var fault) ? Text(played, asJson) : fault.At("--as");

    private static string Text(Realization played, bool asJson) =>
        asJson ? RecipeJson.Write(played.Line.Recipe) : TextTab.Write(played);
}
