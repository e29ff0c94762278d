using System.CommandLine;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Notation;

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
        var choices = new Choices();
        var output = Arguments.OutputFile();
        var command = new Command("import", "Reads somebody's music into an exercise file.") { file, output };
        choices.AddTo(command);
        command.SetAction(parsed =>
            choices
                .Of(parsed)
                .Then(choice => ImportSource.Read(parsed.GetValue(file) ?? "", choice, terminal))
                .Then(Playable)
                .Then<string>(import => Written(import, terminal))
                .Finish(terminal, parsed.GetValue(output))
        );
        return command;
    }

    private static string Written(ImportSource import, Terminal terminal)
    {
        terminal.Note(import.Remarks);
        return RecipeJson.Write(import.Recipe);
    }

    // A line that no hand can finger is said at once, not when it is first used.
    private static Outcome<ImportSource> Playable(ImportSource import) =>
        LineBuilder
            .Build(import.Recipe)
            .Then(line => Realizer.Realize(line, Player.At(2)))
            .Then<ImportSource>(_ => import);

    /// <summary>What of a file is meant.</summary>
    private sealed class Choices
    {
        private readonly Option<string?> _part = Arguments.Text(
            "--part",
            "MusicXML: id or name of the part.",
            "PART"
        );
        private readonly Option<string?> _voice = Arguments.Text(
            "--voice",
            "MusicXML: the voice of the part.",
            "VOICE"
        );
        private readonly Option<string?> _track = Arguments.Text(
            "--track",
            "MIDI: number of the track, from 1.",
            "NUMBER"
        );
        private readonly Option<bool> _unroll = new("--unroll")
        {
            Description = "MusicXML: write repeats out.",
        };
        private readonly Option<bool> _melody = new("--melody")
        {
            Description = "Only the highest of the notes that begin together.",
        };

        public void AddTo(Command command)
        {
            foreach (var option in new Option[] { _part, _voice, _track, _unroll, _melody })
            {
                command.Add(option);
            }
        }

        public Outcome<MusicReading> Of(ParseResult parsed)
        {
            const System.Globalization.NumberStyles style = System.Globalization.NumberStyles.None;
            var culture = System.Globalization.CultureInfo.InvariantCulture;
            var track = 0;
            if (parsed.GetValue(_track) is { } text && !int.TryParse(text, style, culture, out track))
            {
                return new Fault($"{Quote.Short(text)} is no track", "--track", "a whole number from 1");
            }

            return new MusicReading
            {
                Part = parsed.GetValue(_part),
                Voice = parsed.GetValue(_voice),
                Track = parsed.GetValue(_track) is null ? null : track,
                UnrollRepeats = parsed.GetValue(_unroll),
                TopNotesOnly = parsed.GetValue(_melody),
            };
        }
    }
}
