using Passagework.Exercises;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Studio.Features.Exercises;

/// <summary>Fixing a note as it is played now.</summary>
internal static class NoteLock
{
    /// <summary>The finger or the stroke of a note as it is; null for what the note has none of.</summary>
    /// <param name="note">The note.</param>
    /// <param name="index">Its index.</param>
    /// <param name="what">finger or stroke.</param>
    public static Lock? Of(PlayedNote note, int index, string what) =>
        what switch
        {
            "finger" when note.Finger > 0 => new Lock(index, Finger: note.Finger),
            "stroke" when note.Stroke is Stroke.Down or Stroke.Up => new Lock(index, Stroke: note.Stroke),
            _ => null,
        };

    /// <summary>What of a note can be fixed and is not yet.</summary>
    public static IEnumerable<(string What, string Words, string Key)> Fixable(PlayedNote note, Lock? held)
    {
        if (note.Finger > 0 && held?.Finger is null)
            yield return ("finger", $"finger {note.Finger}", "F");

        if (note.Stroke is Stroke.Down or Stroke.Up && held?.Stroke is null)
            yield return ("stroke", note.Stroke == Stroke.Down ? "the down-stroke" : "the up-stroke", "S");
    }

    /// <summary>What is fixed, in words.</summary>
    public static string Words(Lock held)
    {
        var parts = new List<string>();
        if (held.Finger is { } finger)
            parts.Add($"finger {finger}");
        if (held.String is { } on)
            parts.Add($"string {on}");
        if (held.Position is { } position)
            parts.Add($"position {position}");
        if (held.Stroke is { } stroke)
            parts.Add($"{stroke.ToString().ToLowerInvariant()}-stroke");

        return string.Join(", ", parts);
    }
}
