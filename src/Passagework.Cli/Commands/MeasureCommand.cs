using System.CommandLine;
using System.Text.Json.Nodes;
using Passagework.Cli.Output;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Cli.Commands;

/// <summary><c>measure EX [--against EX]</c>: counts, demands, ceilings, balance, feels; side by side.</summary>
internal static class MeasureCommand
{
    public static Command Create(Terminal terminal)
    {
        var exercise = Arguments.Exercise();
        var against = Arguments.Text("--against", "Another exercise to set beside it.", "EXERCISE");
        var player = Arguments.PlayerOption();
        var json = Arguments.Json();
        var output = Arguments.OutputFile();
        var command = new Command(
            "measure",
            "What an exercise asks of each hand, and how it sits against the beat."
        )
        {
            exercise,
            against,
            player,
            json,
            output,
        };
        var overrides = new Overrides(command);
        command.SetAction(parsed =>
            PlayerSource
                .Find(parsed.GetValue(player) ?? "", terminal)
                .Then(who =>
                {
                    Outcome<MeasuredExercise> Measured(string name) =>
                        MeasuredExercise.Find(name, terminal, who.Player, overrides, parsed);
                    var asJson = parsed.GetValue(json);
                    return Measured(parsed.GetValue(exercise) ?? "")
                        .Then(one =>
                            parsed.GetValue(against) is { } name
                                ? Measured(name).Then<string>(other => Pair(one, other, who, asJson))
                                : Single(one, who, asJson)
                        );
                })
                .Finish(terminal, parsed.GetValue(output))
        );
        return command;
    }

    private static Outcome<string> Single(MeasuredExercise one, PlayerSource who, bool json)
    {
        if (json)
        {
            return JsonPage.Print(MeasurementJson.Of(one.Name, who.Name, one.Measured));
        }

        return Growth
            .Of(one.Measured.Realization.Line.Recipe, who.Player)
            .Then<string>(growth => MeasurementText.Of(one.Name, who.Name, one.Measured, growth));
    }

    private static string Pair(MeasuredExercise one, MeasuredExercise other, PlayerSource who, bool json) =>
        json
            ? JsonPage.Print(
                new JsonObject
                {
                    ["player"] = who.Name,
                    ["measured"] = MeasurementJson.Of(one.Name, who.Name, one.Measured),
                    ["against"] = MeasurementJson.Of(other.Name, who.Name, other.Measured),
                }
            )
            : ComparisonText.Of((one.Name, one.Measured), (other.Name, other.Measured), who.Name);
}
