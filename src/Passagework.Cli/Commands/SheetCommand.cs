using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using Passagework.Engraving.Pictures;
using Passagework.Engraving.Press;
using Passagework.Engraving.Sheets;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Cli.Commands;

/// <summary><c>sheet EX...</c>: one page each, as PDF; what had to be cut is said on standard error.</summary>
internal static class SheetCommand
{
    public static Command Create(Terminal terminal)
    {
        var exercises = new Argument<string[]>("exercises")
        {
            Description = "Ids of the shelf or exercise files; a page each.",
            Arity = ArgumentArity.OneOrMore,
        };
        var player = Arguments.PlayerOption();
        var output = Arguments.OutputFile();
        var command = new Command("sheet", "A page to print for each exercise: music, tempo plan, log.")
        {
            exercises,
            player,
            output,
        };
        var words = new SheetWords(command);
        var overrides = new Overrides(command);
        command.SetAction(parsed =>
            PlayerSource
                .Find(parsed.GetValue(player) ?? "", terminal)
                .Then(who =>
                    All(
                        parsed.GetValue(exercises) ?? [],
                        name => MeasuredExercise.Find(name, terminal, who.Player, overrides, parsed)
                    )
                )
                .Then(found => words.Of(parsed).Then(chosen => Printed(found, chosen, terminal)))
                .Finish(terminal, parsed.GetValue(output))
        );
        return command;
    }

    private static Outcome<ImmutableArray<MeasuredExercise>> All(
        string[] names,
        Func<string, Outcome<MeasuredExercise>> find
    )
    {
        var found = ImmutableArray.CreateBuilder<MeasuredExercise>(names.Length);
        foreach (var name in names)
        {
            if (!find(name).TryGet(out var measured, out var fault))
            {
                return names.Length == 1 ? fault : fault.At($"{name}: ");
            }

            found.Add(measured);
        }

        return found.MoveToImmutable();
    }

    private static Outcome<Answer> Printed(
        ImmutableArray<MeasuredExercise> found,
        SheetChoice chosen,
        Terminal terminal
    )
    {
        var exercises = found.Select(one =>
            (one.Measured.Realization, chosen.Apply(SheetDefaults.Of(one.Measured)))
        );
        return SheetMaker
            .Make([.. exercises], chosen.Options)
            .Then(document =>
            {
                for (var page = 0; page < found.Length; page++)
                {
                    terminal.Note(document.Pages[page].Remarks, found[page].Name);
                }

                return PdfWriter.Write(document);
            })
            .Then<Answer>(bytes => Answer.Of(bytes));
    }

    /// <summary>What was asked for on a sheet.</summary>
    private sealed record SheetChoice(SheetOptions Options, Func<SheetContent, SheetContent> Apply);

    /// <summary>Options that put words on a sheet.</summary>
    private sealed class SheetWords
    {
        private readonly Option<string?> _student = Arguments.Text("--student", "For whom.", "NAME");
        private readonly Option<string?> _date = Arguments.Text(
            "--date",
            "From when, such as 2026-11-25.",
            "DATE"
        );
        private readonly Option<string?> _weeks = Arguments.Text(
            "--weeks",
            "For how many weeks, 1 to 52.",
            "WEEKS"
        );
        private readonly Option<string?> _teacher = Arguments.Text("--teacher", "Who gives it.", "NAME");
        private readonly Option<string?> _room = Arguments.Text("--room", "Where lessons are.", "NAME");
        private readonly Option<string?> _paper = Arguments.Text(
            "--paper",
            "A4 (the default) or letter.",
            "PAPER"
        );
        private readonly Option<bool> _leftHanded = new("--left-handed")
        {
            Description = "The neck as in a mirror.",
        };

        public SheetWords(Command command)
        {
            foreach (
                var option in new Option[] { _student, _date, _weeks, _teacher, _room, _paper, _leftHanded }
            )
            {
                command.Options.Add(option);
            }
        }

        public Outcome<SheetChoice> Of(ParseResult parsed) =>
            DateOf(parsed)
                .Then(date =>
                    WeeksOf(parsed)
                        .Then(weeks =>
                            Arguments
                                .Word(PictureOptions.Papers, _paper, parsed)
                                .Then<SheetChoice>(paper => Choice(parsed, date, weeks, paper))
                        )
                );

        private SheetChoice Choice(ParseResult parsed, DateOnly? date, int? weeks, Paper paper) =>
            new(
                new SheetOptions
                {
                    Paper = paper,
                    Neck = new FretboardOptions { LeftHanded = parsed.GetValue(_leftHanded) },
                },
                content =>
                    content with
                    {
                        Student = parsed.GetValue(_student) ?? "",
                        From = date,
                        Weeks = weeks,
                        Teacher = parsed.GetValue(_teacher) ?? "",
                        Room = parsed.GetValue(_room) ?? "",
                    }
            );

        private Outcome<DateOnly?> DateOf(ParseResult parsed)
        {
            if (parsed.GetValue(_date) is not { } text)
            {
                return (DateOnly?)null;
            }

            var culture = CultureInfo.InvariantCulture;
            return DateOnly.TryParseExact(text, "yyyy-MM-dd", culture, DateTimeStyles.None, out var date)
                ? (DateOnly?)date
                : new Fault(
                    $"{Quote.Short(text)} is no date",
                    _date.Name,
                    "year, month and day such as 2026-11-25"
                );
        }

        private Outcome<int?> WeeksOf(ParseResult parsed)
        {
            if (parsed.GetValue(_weeks) is not { } text)
            {
                return (int?)null;
            }

            var culture = CultureInfo.InvariantCulture;
            return int.TryParse(text, NumberStyles.None, culture, out var weeks) && weeks is >= 1 and <= 52
                ? (int?)weeks
                : new Fault($"{Quote.Short(text)} is no number of weeks", _weeks.Name, "1 to 52");
        }
    }
}
