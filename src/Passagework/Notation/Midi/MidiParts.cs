using System.Collections.Immutable;
using System.Globalization;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>The notes to be read and what goes with them.</summary>
/// <param name="Division">Ticks per quarter note.</param>
/// <param name="Tracks">All tracks with notes.</param>
/// <param name="Track">The one that is read.</param>
/// <param name="Title">Name of the piece, else of the track; null where neither is named.</param>
/// <param name="Sounds">Its notes.</param>
/// <param name="Frame">The tracks whose tempo, metre and key hold for it.</param>
internal sealed record MidiChoice(
    int Division,
    ImmutableArray<MidiTrack> Tracks,
    MidiTrack Track,
    string? Title,
    IReadOnlyList<MidiSound> Sounds,
    IReadOnlyList<MidiTrackData> Frame
);

/// <summary>Divides a file into tracks as people count them and chooses one.</summary>
internal static class MidiParts
{
    private const int DrumChannel = 9;

    /// <summary>
    /// In a file of one track every channel counts as a track, in others every track, its drums apart. Without a wish
    /// the one with most notes is chosen that is no drum track, the first of equals.
    /// </summary>
    public static Outcome<MidiChoice> Choose(MidiSequence sequence, MidiReading reading)
    {
        var parts = sequence
            .Tracks.SelectMany(track => PartsOf(track, sequence.Format))
            .Select((part, index) => part with { Number = index + 1 })
            .ToList();
        if (parts.Count == 0)
        {
            return new Fault("no notes in the file", "", "a track with notes");
        }

        if (reading.Track is { } number && (number < 1 || number > parts.Count))
        {
            return new Fault(
                string.Create(CultureInfo.InvariantCulture, $"there is no track {number}"),
                "",
                $"1 to {parts.Count.ToString(CultureInfo.InvariantCulture)}: {Names(parts)}"
            );
        }

        var chosen = reading.Track is { } wish
            ? parts[wish - 1]
            : parts.OrderBy(part => part.IsDrums).ThenByDescending(part => part.Sounds.Count).First();
        return new MidiChoice(
            sequence.Division,
            [.. parts.Select(Listed)],
            Listed(chosen),
            TitleOf(sequence, chosen),
            chosen.Sounds,
            sequence.Format == 2 ? [chosen.Track] : sequence.Tracks
        );
    }

    private static IEnumerable<Part> PartsOf(MidiTrackData track, int format) =>
        track
            .Sounds.GroupBy(sound =>
                format == 0 || sound.Channel == DrumChannel ? sound.Channel : DrumChannel + 1
            )
            .OrderBy(group => group.First().Channel)
            .Select(group => new Part(0, track, group.First().Channel == DrumChannel, [.. group]));

    private static MidiTrack Listed(Part part) =>
        new(part.Number, part.Track.Name, part.Sounds.Count, part.IsDrums);

    private static string? TitleOf(MidiSequence sequence, Part chosen)
    {
        var piece = sequence.Format == 2 ? "" : sequence.Tracks[0].Name;
        var title = piece.Length > 0 ? piece : chosen.Track.Name;
        return title.Length > 0 ? title : null;
    }

    private static string Names(List<Part> parts)
    {
        const int Shown = 8;
        var names = parts
            .Take(Shown)
            .Select(part =>
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{part.Number} {Quote.Short(part.Track.Name)} {part.Sounds.Count} notes"
                )
            );
        return string.Join(", ", names) + (parts.Count > Shown ? ", …" : "");
    }

    private sealed record Part(int Number, MidiTrackData Track, bool IsDrums, List<MidiSound> Sounds);
}
