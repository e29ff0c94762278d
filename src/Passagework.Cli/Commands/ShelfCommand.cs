using System.CommandLine;
using System.Text;
using System.Text.Json.Nodes;
using Passagework.Cli.Output;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Cli.Commands;

/// <summary><c>shelf</c>: lists the starting library, with what each exercise comes to for a level.</summary>
internal static class ShelfCommand
{
    public static Command Create(Terminal terminal)
    {
        var family = Arguments.Text("--family", "Only this family.", "FAMILY");
        var level = new Option<string>("--level")
        {
            Description = "For a player of this level.",
            HelpName = "LEVEL",
            DefaultValueFactory = _ => "intermediate",
        };
        var json = Arguments.Json();
        var output = Arguments.OutputFile();
        var command = new Command("shelf", "Lists the starting library.") { family, level, json, output };
        command.SetAction(parsed =>
            PlayerJson
                .ReadLevel(parsed.GetValue(level) ?? "")
                .Then(player =>
                    Chosen(parsed.GetValue(family))
                        .Then<string>(chosen =>
                            parsed.GetValue(json) ? ForMachines(chosen, player) : ForPeople(chosen, player)
                        )
                )
                .Finish(terminal, parsed.GetValue(output))
        );
        return command;
    }

    private static Outcome<IReadOnlyList<LibraryExercise>> Chosen(string? family)
    {
        if (family is null)
        {
            return new Outcome<IReadOnlyList<LibraryExercise>>.Done(Library.All);
        }

        return Library.OfFamily(family) is { IsEmpty: false } forms
            ? new Outcome<IReadOnlyList<LibraryExercise>>.Done(forms)
            : new Fault(
                $"unknown family {Quote.Short(family)}",
                "--family",
                NearestWord.Hint(family, Library.Families)
            );
    }

    private static string ForPeople(IReadOnlyList<LibraryExercise> chosen, Player player)
    {
        var text = new StringBuilder();
        text.AppendLine($"The shelf, with a plausible top tempo for the level {player.LevelText}");
        foreach (var family in chosen.GroupBy(exercise => exercise.Family))
        {
            var forms = family
                .Select(exercise => (exercise.Id, Measured: Measured(exercise, player)))
                .ToArray();
            text.AppendLine().AppendLine($"{family.Key}: {family.First().Recipe.Purpose}");
            if (forms[0].Measured?.Fit?.Sentence is { } sentence)
            {
                text.AppendLine($"  {sentence}");
            }

            foreach (var (id, measured) in forms)
            {
                text.AppendLine(Row(id, measured));
            }
        }

        return text.ToString();
    }

    private static Measurement? Measured(LibraryExercise exercise, Player player) =>
        Measurer.Measure(exercise.Recipe, player).TryGet(out var measured, out _) ? measured : null;

    private static string Row(string id, Measurement? measured)
    {
        var name = id.PadRight(32);
        if (measured is null)
        {
            return $"  {name}  not playable at this level";
        }

        var notesPerBeat = measured.Realization.Line.Recipe.Rhythm.NotesPerBeat;
        var tempo = Words.Bpm(measured.Ceiling, notesPerBeat);
        return Words.Text(
            $"  {name}  {measured.Realization.Notes.Length, 3} notes, {notesPerBeat} a beat  {tempo, 8} bpm"
        );
    }

    private static string ForMachines(IReadOnlyList<LibraryExercise> chosen, Player player) =>
        JsonPage.Print(
            new JsonObject
            {
                ["level"] = player.LevelText,
                ["shelf"] = new JsonArray([.. chosen.Select(JsonNode (exercise) => Entry(exercise, player))]),
            }
        );

    private static JsonObject Entry(LibraryExercise exercise, Player player)
    {
        var entry = new JsonObject
        {
            ["id"] = exercise.Id,
            ["family"] = exercise.Family,
            ["form"] = exercise.Form,
            ["title"] = exercise.Recipe.Title,
            ["purpose"] = exercise.Recipe.Purpose,
        };
        if (Measured(exercise, player) is { } measured)
        {
            entry["notes"] = measured.Realization.Notes.Length;
            entry["notesPerBeat"] = exercise.Recipe.Rhythm.NotesPerBeat;
            entry["low"] = Rounded.Figure(measured.Ceiling.Range?.Low);
            entry["high"] = Rounded.Figure(measured.Ceiling.Range?.High);
            entry["sentence"] = measured.Fit?.Sentence;
        }

        return entry;
    }
}
