using System.Text;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Notation;

namespace Passagework.Cli;

/// <summary>Music from somebody else's file: what was read, and what has to be said about it.</summary>
/// <param name="Recipe">The line, written note by note.</param>
/// <param name="Remarks">What was guessed, changed or left out.</param>
internal sealed record ImportSource(Recipe Recipe, IReadOnlyList<string> Remarks)
{
    private const int MostXmlBytes = 64 << 20;
    private const int MostMxlBytes = 16 << 20;
    private static readonly byte[] BeforeMarkup = [0xEF, 0xBB, 0xBF, 0xFE, 0xFF, 0, .. " \t\r\n"u8];

    /// <summary>Which part of the file is meant; null leaves it to the reader.</summary>
    public sealed record Choice(string? Part, string? Voice, int? Track, bool Unroll, bool Melody);

    /// <summary>Reads a file by what it begins with: MIDI, MusicXML plain or compressed, else text tab.</summary>
    public static Outcome<ImportSource> Read(string name, Choice choice, Terminal terminal) =>
        InputFile.Read(name, terminal, MostBytes).Then(bytes => Parse(bytes, choice));

    private static int MostBytes(byte[] beginning) =>
        beginning.AsSpan() switch
        {
            [(byte)'M', (byte)'T', ..] => Midi.MostBytes,
            [(byte)'P', (byte)'K', ..] => MostMxlBytes,
            _ => LooksLikeXml(beginning) ? MostXmlBytes : InputFile.MostBytes,
        };

    private static Outcome<ImportSource> Parse(byte[] bytes, Choice choice)
    {
        if (bytes.AsSpan().StartsWith("MThd"u8))
        {
            return Misplaced(choice with { Track = null }, "MIDI files have tracks")
                ?? Midi.Read(bytes, new MidiReading { Track = choice.Track, TopNotesOnly = choice.Melody })
                    .Then<ImportSource>(import => Of(import));
        }

        if (LooksLikeXml(bytes) || bytes.AsSpan().StartsWith("PK"u8))
        {
            var reading = new MusicXmlReading
            {
                Part = choice.Part,
                Voice = choice.Voice,
                UnrollRepeats = choice.Unroll,
                TopNotesOnly = choice.Melody,
            };
            return Misplaced(
                    new Choice(null, null, choice.Track, Unroll: false, Melody: false),
                    "MusicXML has parts and voices"
                ) ?? MusicXml.Read(bytes, reading).Then<ImportSource>(import => Of(import));
        }

        return Misplaced(choice, "text tab has one line only")
            ?? TextTab
                .Read(
                    Encoding.UTF8.GetString(InputFile.WithoutMark(bytes)),
                    new TabReading { TopNotesOnly = choice.Melody }
                )
                .Then<ImportSource>(import => Of(import));
    }

    private static Outcome<ImportSource>? Misplaced(Choice choice, string right)
    {
        var option = choice switch
        {
            { Part: not null } => "--part",
            { Voice: not null } => "--voice",
            { Track: not null } => "--track",
            { Unroll: true } => "--unroll",
            _ => null,
        };
        return option is null
            ? null
            : (Outcome<ImportSource>)new Fault("this file has no such thing to choose", option, right);
    }

    private static bool LooksLikeXml(byte[] bytes)
    {
        var text = bytes.AsSpan(0, Math.Min(bytes.Length, 512));
        // Byte-order marks, white space and the zero bytes of UTF-16 may stand before it.
        var first = text.IndexOfAnyExcept(BeforeMarkup);
        return first >= 0 && text[first] == (byte)'<';
    }

    private static ImportSource Of(TabImport import) =>
        new(import.Recipe, [.. import.Warnings.Select(warning => warning.ToString())]);

    private static ImportSource Of(MusicXmlImport import) =>
        new(import.Recipe, [.. OtherVoices(import), .. import.LeftOut.Select(remark => remark.ToString())]);

    private static IEnumerable<string> OtherVoices(MusicXmlImport import)
    {
        var others = import.Parts.SelectMany(part => OtherVoices(part, import)).ToList();
        return others.Count == 0
            ? []
            :
            [
                Others(others.Count, "voice", others.Sum(voice => voice.Notes))
                    + $"; read was voice {import.Voice} of part {import.Part}",
            ];
    }

    // A tab staff beside notation repeats its notes and is no voice of its own.
    private static IEnumerable<ScoreVoice> OtherVoices(ScorePart part, MusicXmlImport import)
    {
        var notation = part.Voices.Where(voice => !voice.IsTab).ToList();
        return (notation.Count > 0 ? notation : [.. part.Voices]).Where(voice =>
            part.Id != import.Part || voice.Name != import.Voice
        );
    }

    private static string Others(int count, string thing, int notes) =>
        FormattableString.Invariant(
            $"{count} other {thing}{(count == 1 ? "" : "s")} left out ({notes} note{(notes == 1 ? "" : "s")})"
        );

    private static ImportSource Of(MidiImport import)
    {
        var remarks = import.Warnings.Select(warning => warning.ToString()).ToList();
        var others = import.Tracks.Where(track => track.Number != import.Track).ToList();
        if (others.Count > 0)
        {
            var left = Others(others.Count, "track", others.Sum(track => track.Notes));
            remarks.Add(FormattableString.Invariant($"{left}; read was track {import.Track}"));
        }

        if (import.NotesLeftOut > 0)
        {
            remarks.Add(
                FormattableString.Invariant(
                    $"{import.NotesLeftOut} notes that begin together with a higher one were left out"
                )
            );
        }

        if (import.Residual.LargestTicks > 0)
        {
            remarks.Add($"notes were moved to the grid: {import.Residual}");
        }

        return new ImportSource(import.Recipe, remarks);
    }
}
