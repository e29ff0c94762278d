using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Exercises.Ideas;

/// <summary>A note set as it is called in a sentence.</summary>
internal static class ScaleWords
{
    /// <summary>Such as <c>the A minor pentatonic</c>, <c>the C major scale</c> and <c>the notes A, C and E</c>.</summary>
    public static string Of(NoteSet notes, RoomStyle style)
    {
        var root = style.Of(notes.Root);
        return notes.Scale switch
        {
            null => $"the notes {NumberWords.List([.. SetNames.Ascending(notes).Select(style.Of)])}",
            "chromatic" => $"the chromatic scale on {root}",
            var scale when scale.EndsWith("triad", StringComparison.Ordinal) => $"the {root} {scale}",
            var scale when scale.EndsWith("seventh", StringComparison.Ordinal) => $"the {root} {scale} chord",
            var scale when scale.EndsWith("pentatonic", StringComparison.Ordinal) => $"the {root} {scale}",
            var scale => $"the {root} {scale} scale",
        };
    }

    /// <summary>The key of a written line, such as <c>A natural minor</c>.</summary>
    public static string KeyOf(NoteSet notes, RoomStyle style) =>
        notes.Scale is { } scale and not "chromatic" ? $"{style.Of(notes.Root)} {scale}" : Of(notes, style);
}
