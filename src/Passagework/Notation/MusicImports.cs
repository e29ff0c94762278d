using System.Collections.Immutable;
using System.Globalization;

namespace Passagework.Notation;

/// <summary>Puts what the readers found into the words that all of them share.</summary>
internal static class MusicImports
{
    public static MusicImport Of(TabImport import) =>
        new(import.Recipe, [.. import.Warnings.Select(warning => warning.ToString())], []);

    public static MusicImport Of(MusicXmlImport import)
    {
        var lines = import
            .Parts.SelectMany(part => Voices(part).Select(voice => LineOf(part, voice, import)))
            .ToImmutableArray();
        var others = lines.Where(line => !line.IsRead).ToList();
        ImmutableArray<string> remarks = [.. import.LeftOut.Select(remark => remark.ToString())];
        return new MusicImport(
            import.Recipe,
            others.Count == 0
                ? remarks
                :
                [
                    $"{Others(others, "voice")}; read was voice {import.Voice} of part {import.Part}",
                    .. remarks,
                ],
            Choices(lines)
        );
    }

    public static MusicImport Of(MidiImport import)
    {
        var lines = import.Tracks.Select(track => LineOf(track, import)).ToImmutableArray();
        var remarks = import.Warnings.Select(warning => warning.ToString()).ToList();
        var others = lines.Where(line => !line.IsRead).ToList();
        if (others.Count > 0)
            remarks.Add(Invariant($"{Others(others, "track")}; read was track {import.Track}"));

        if (import.NotesLeftOut > 0)
        {
            remarks.Add(
                Invariant($"{import.NotesLeftOut} notes that begin together with a higher one were left out")
            );
        }

        if (import.Residual.LargestTicks > 0)
            remarks.Add($"notes were moved to the grid: {import.Residual}");

        return new MusicImport(import.Recipe, [.. remarks], Choices(lines));
    }

    private static MusicLine LineOf(ScorePart part, ScoreVoice voice, MusicXmlImport import)
    {
        var name = part.Name.Length > 0 ? part.Name : $"part {part.Id}";
        return new MusicLine(
            Voices(part).Count() == 1 ? name : $"{name}, voice {voice.Name}",
            new MusicReading { Part = part.Id, Voice = voice.Name },
            voice.Notes,
            part.Id == import.Part && voice.Name == import.Voice
        );
    }

    private static MusicLine LineOf(MidiTrack track, MidiImport import) =>
        new(
            (track.Name.Length > 0 ? track.Name : Invariant($"track {track.Number}"))
                + (track.IsDrums ? ", drums" : ""),
            new MusicReading { Track = track.Number },
            track.Notes,
            track.Number == import.Track
        );

    // A tab staff beside notation repeats its notes and is no voice of its own.
    private static IEnumerable<ScoreVoice> Voices(ScorePart part)
    {
        var notation = part.Voices.Where(voice => !voice.IsTab).ToList();
        return notation.Count > 0 ? notation : part.Voices;
    }

    private static ImmutableArray<MusicLine> Choices(ImmutableArray<MusicLine> lines) =>
        lines.Length > 1 ? lines : [];

    private static string Others(List<MusicLine> others, string thing)
    {
        var notes = others.Sum(line => line.Notes);
        return Invariant(
            $"{others.Count} other {thing}{(others.Count == 1 ? "" : "s")} left out ({notes} note{(notes == 1 ? "" : "s")})"
        );
    }

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
