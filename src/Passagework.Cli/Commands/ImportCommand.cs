using System.CommandLine;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Cli.Commands;

/// <summary>
/// <c>import FILE</c>: text tab, MusicXML or MIDI to an exercise file; what was guessed or left out is said on standard
/// error.
/// </summary>
internal static class ImportCommand
{
    public static Command Create(Terminal terminal)
    {
        var file = new Argument<string>("file")
        {
            Description = "Text tab, MusicXML, MXL or MIDI, or - for standard input.",
        };
        var part = Arguments.Text("--part", "MusicXML: id or name of the part.", "PART");
        var voice = Arguments.Text("--voice", "MusicXML: the voice of the part.", "VOICE");
        var track = Arguments.Text("--track", "MIDI: number of the track, from 1.", "NUMBER");
        var unroll = new Option<bool>("--unroll") { Description = "MusicXML: write repeats out." };
        var output = Arguments.OutputFile();
        var command = new Command("import", "Reads somebody's music into an exercise file.")
        {
            file,
            part,
            voice,
            track,
            unroll,
            output,
        };
        command.SetAction(parsed =>
            TrackOf(parsed.GetValue(track))
                .Then(number =>
                    ImportSource.Read(
                        parsed.GetValue(file) ?? "",
                        new ImportSource.Choice(
                            parsed.GetValue(part),
                            parsed.GetValue(voice),
                            number.Track,
                            parsed.GetValue(unroll)
                        ),
                        terminal
                    )
                )
                .Then(Playable)
                .Then<string>(import => Written(import, terminal))
                .Finish(terminal, parsed.GetValue(output))
        );
        return command;
    }

    private static Outcome<TrackChoice> TrackOf(string? text)
    {
        if (text is null)
        {
            return new TrackChoice(null);
        }

        const System.Globalization.NumberStyles style = System.Globalization.NumberStyles.None;
        return int.TryParse(text, style, System.Globalization.CultureInfo.InvariantCulture, out var number)
            ? new TrackChoice(number)
            : new Fault($"{Quote.Short(text)} is no track", "--track", "a whole number from 1");
    }

    private static string Written(ImportSource import, Terminal terminal)
    {
        foreach (var remark in import.Remarks)
        {
            terminal.Error.WriteLine($"note: {remark}");
        }

        return RecipeJson.Write(import.Recipe);
    }

    // A line that no hand can finger is said at once, not when it is first used.
    private static Outcome<ImportSource> Playable(ImportSource import) =>
        LineBuilder
            .Build(import.Recipe)
            .Then(line => Realizer.Realize(line, Player.At(2)))
            .Then<ImportSource>(_ => import);

    private sealed record TrackChoice(int? Track);
}
