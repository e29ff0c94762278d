using System.CommandLine;
using System.Text.Json.Nodes;
using Passagework.Cli.Output;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Press;
using Passagework.Engraving.Prints;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Notation;
using Passagework.Sound.Performance;

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
        ("midi", Form.Midi),
        ("svg", Form.Svg),
        ("png", Form.Png),
        ("pdf", Form.Pdf),
        ("wav", Form.Wav),
        ("times", Form.Times)
    );

    public static Command Create(Terminal terminal)
    {
        var exercise = Arguments.Exercise();
        var form = FormOption();
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
        var doors = new Doors(command);
        var overrides = new Overrides(command);
        command.SetAction(parsed =>
            PlayerSource
                .Find(parsed.GetValue(player) ?? "", terminal)
                .Then(who =>
                    MeasuredExercise.Find(
                        parsed.GetValue(exercise) ?? "",
                        terminal,
                        who.Player,
                        overrides,
                        parsed
                    )
                )
                .Then(found =>
                    parsed.GetValue(json)
                        ? ForMachines(found.Name, found.Measured.Realization)
                        : Written(
                            found.Measured,
                            parsed.GetValue(form) ?? "tab",
                            doors.With(parsed, terminal)
                        )
                )
                .Finish(terminal, parsed.GetValue(output))
        );
        return command;
    }

    private static Option<string?> FormOption() =>
        Arguments.Text(
            "--as",
            "tab (text, the default), json (the idea as a file), musicxml, mxl, midi, svg, png, pdf, wav (sound) "
                + "or times (when each note of the sound begins).",
            "FORM"
        );

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

    private static Outcome<Answer> Written(Measurement measured, string form, Asked asked)
    {
        if (!Forms.Read(form).TryGet(out var chosen, out var fault))
        {
            return fault.At("--as");
        }

        return chosen switch
        {
            Form.Svg or Form.Png or Form.Pdf => asked
                .Doors.Pictures.Of(asked.Parsed)
                .Then(options => Drawn(chosen, measured, options, asked.Terminal)),
            Form.Wav or Form.Times => Heard(chosen, measured.Realization, asked),
            Form.Midi when asked.Doors.AreHeard(asked.Parsed) => Heard(chosen, measured.Realization, asked),
            _ => As(chosen, measured.Realization),
        };
    }

    private static Outcome<Answer> Heard(Form form, Realization played, Asked asked) =>
        asked
            .Doors.Times.Perform(played, asked.Parsed)
            .Then(performance =>
                form switch
                {
                    Form.Wav => asked.Doors.Sounds.Wav(performance, asked.Parsed),
                    Form.Times => Answer.Of(JsonPage.Print(TimeMapJson.Of(performance.Times))),
                    _ => asked.Doors.Sounds.Midi(performance, asked.Parsed),
                }
            );

    private static Outcome<Answer> As(Form form, Realization played) =>
        form switch
        {
            Form.Tab => Answer.Of(TextTab.Write(played)),
            Form.Json => Answer.Of(RecipeJson.Write(played.Line.Recipe)),
            Form.MusicXml => MusicXml.Write(played).Then<Answer>(text => Answer.Of(text)),
            Form.Mxl => MusicXml.WriteCompressed(played).Then<Answer>(bytes => Answer.Of(bytes)),
            _ => Answer.Of(Midi.Write(played)),
        };

    private static Outcome<Answer> Drawn(
        Form form,
        Measurement measured,
        PictureChoice choice,
        Terminal terminal
    ) =>
        form switch
        {
            Form.Svg => Picture(measured, choice, terminal)
                .Then(page => SvgWriter.Write(page, SvgStyle.Screen))
                .Then<Answer>(text => Answer.Of(text)),
            Form.Png => Picture(measured, choice, terminal)
                .Then(page =>
                    PngWriter.Refusal(page, choice.Dpi) is { } fault
                        ? fault.At("--dpi")
                        : PngWriter.Write(page, choice.Dpi, Palette.Light)
                )
                .Then<Answer>(bytes => Answer.Of(bytes)),
            _ => ExercisePrint
                .Pages(measured, choice.Print)
                .Then(document =>
                {
                    terminal.Note(document.Pages[0].Remarks);
                    return PdfWriter.Write(document);
                })
                .Then<Answer>(bytes => Answer.Of(bytes)),
        };

    private static Outcome<Page> Picture(Measurement measured, PictureChoice choice, Terminal terminal) =>
        ExercisePrint
            .Picture(measured, choice.Print)
            .Then<Page>(page =>
            {
                terminal.Note(page.Remarks);
                return page;
            });

    /// <summary>The options of pictures and of sound.</summary>
    private sealed class Doors(Command command)
    {
        public PictureOptions Pictures { get; } = new(command);

        public TimeOptions Times { get; } = new(command);

        public SoundOptions Sounds { get; } = new(command);

        public bool AreHeard(ParseResult parsed) => Times.AreGiven(parsed) || Sounds.AreGiven(parsed);

        public Asked With(ParseResult parsed, Terminal terminal) => new(this, parsed, terminal);
    }

    private sealed record Asked(Doors Doors, ParseResult Parsed, Terminal Terminal);

    private enum Form
    {
        Tab,
        Json,
        MusicXml,
        Mxl,
        Midi,
        Svg,
        Png,
        Pdf,
        Wav,
        Times,
    }
}
