using System.CommandLine;
using System.Text.Json.Nodes;
using Passagework.Cli.Output;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Notation;

namespace Passagework.Cli.Commands;

/// <summary><c>show EX --as FORM</c>: writes an exercise out.</summary>
internal static class ShowCommand
{
    private static readonly WordList<Form> Forms = new(
        "form",
        ("tab", Form.Tab),
        ("json", Form.Json),
        ("musicxml", Form.MusicXml),
        ("mxl", Form.Mxl),
        ("midi", Form.Midi)
    );

    public static Command Create(Terminal terminal)
    {
        var exercise = Arguments.Exercise();
        var form = Arguments.Text(
            "--as",
            "tab (text, the default), json (the idea as a file), musicxml, mxl or midi.",
            "FORM"
        );
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

    private static Outcome<Answer> ForMachines(string name, Realization played) =>
        Answer.Of(
            JsonPage.Print(
                new JsonObject
                {
                    ["exercise"] = name,
                    ["idea"] = JsonNode.Parse(RecipeJson.Write(played.Line.Recipe)),
                    ["notes"] = MeasurementJson.Notes(played),
                }
            )
        );

    private static Outcome<Answer> Written(Realization played, string form) =>
        Forms.Read(form).TryGet(out var chosen, out var fault) ? As(chosen, played) : fault.At("--as");

    private static Outcome<Answer> As(Form form, Realization played) =>
        form switch
        {
            Form.Tab => Answer.Of(TextTab.Write(played)),
            Form.Json => Answer.Of(RecipeJson.Write(played.Line.Recipe)),
            Form.MusicXml => MusicXml.Write(played).Then<Answer>(text => Answer.Of(text)),
            Form.Mxl => MusicXml.WriteCompressed(played).Then<Answer>(bytes => Answer.Of(bytes)),
            _ => Answer.Of(Midi.Write(played)),
        };

    private enum Form
    {
        Tab,
        Json,
        MusicXml,
        Mxl,
        Midi,
    }
}
