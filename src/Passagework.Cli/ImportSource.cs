using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Notation;

namespace Passagework.Cli;

/// <summary>Music from somebody else's file: what was read, and what has to be said about it.</summary>
/// <param name="Recipe">The line, written note by note.</param>
/// <param name="Remarks">What was guessed, changed or left out.</param>
internal sealed record ImportSource(Recipe Recipe, IReadOnlyList<string> Remarks)
{
    /// <summary>Reads a file by what it begins with: MIDI, MusicXML plain or compressed, an exercise, else text tab.</summary>
    public static Outcome<ImportSource> Read(string name, MusicReading reading, Terminal terminal) =>
        InputFile
            .Read(name, terminal, beginning => MusicFile.MostBytes(MusicFile.KindOf(beginning)))
            .Then(bytes =>
                Misplaced(MusicFile.KindOf(bytes), reading) is { } misplaced
                    ? misplaced
                    : MusicFile.Read(bytes, reading)
            )
            .Then<ImportSource>(import => new ImportSource(import.Recipe, import.Remarks));

    // An option that means nothing for a file was meant for another one.
    private static Fault? Misplaced(MusicFileKind kind, MusicReading reading) =>
        kind switch
        {
            MusicFileKind.Midi => Misplaced(reading with { Track = null }, "MIDI files have tracks"),
            MusicFileKind.MusicXml or MusicFileKind.PackedMusicXml => Misplaced(
                new MusicReading { Track = reading.Track },
                "MusicXML has parts and voices"
            ),
            MusicFileKind.Exercise => Misplaced(reading, "an exercise file has one line only"),
            _ => Misplaced(reading, "text tab has one line only"),
        };

    private static Fault? Misplaced(MusicReading reading, string right)
    {
        var option = reading switch
        {
            { Part: not null } => "--part",
            { Voice: not null } => "--voice",
            { Track: not null } => "--track",
            { UnrollRepeats: true } => "--unroll",
            _ => null,
        };
        return option is null ? null : new Fault("this file has no such thing to choose", option, right);
    }
}
