using System.Text.Json;

namespace Passagework.Tests.Outside;

/// <summary>A note as the reader of the npm package "musicvis-lib" hears it.</summary>
/// <param name="Midi">The key that sounds.</param>
/// <param name="Start">Seconds from the beginning.</param>
/// <param name="Place">Such as <c>6:5</c>; null where the score tells none.</param>
internal sealed record HeardNote(int Midi, double Start, string? Place)
{
    /// <summary>All notes of a part in the order of the file.</summary>
    public static IReadOnlyList<HeardNote> Of(JsonElement part) =>
        [.. part.GetProperty("notes").EnumerateArray().Select(Read)];

    /// <summary>The notes of a part one after the other; of a chord the top one.</summary>
    public static IReadOnlyList<HeardNote> TopNotes(JsonElement part) =>
        [
            .. Of(part)
                .GroupBy(note => note.Start)
                .OrderBy(chord => chord.Key)
                .Select(chord => chord.MaxBy(note => note.Midi)!), // a group is never empty
        ];

    private static HeardNote Read(JsonElement note) =>
        new(
            note[0].GetInt32(),
            note[1].GetDouble(),
            note[2].ValueKind == JsonValueKind.Null ? null : $"{note[2]}:{note[3]}"
        );
}
