using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Exercises;

/// <summary>Reads <c>written</c>: a line entry by entry.</summary>
internal static class WrittenReader
{
    public static WrittenLine Read(JsonCursor cursor) => new(cursor.List(Entry));

    private static WrittenEntry Entry(JsonCursor cursor)
    {
        var fields = JsonFields.Of(cursor, RecipeFields.Written);
        if (fields.Optional("rest") is { } rest)
        {
            foreach (var name in fields.Names.Where(name => name != "rest"))
            {
                fields
                    .Optional(name)
                    ?.Refuse("does not belong to a rest", "a rest is only {\"rest\": \"1/16\"}");
            }

            return new WrittenEntry { Duration = rest.Exact() };
        }

        if (fields.Has("place") == fields.Has("pitch"))
        {
            var what = fields.Has("place") ? "has both a place and a pitch" : "has no place, pitch or rest";
            cursor.Refuse(what, "one of \"place\": \"6:5\", \"pitch\": \"C4\", \"rest\": \"1/16\"");
        }

        return new WrittenEntry
        {
            Place = fields.Optional("place") is { } place ? LayoutReader.PlaceOf(place) : null,
            Pitch = fields.Optional("pitch") is { } pitch ? PitchOf(pitch) : null,
            With = fields.Optional("with")?.List(Tone) ?? [],
            Duration = fields.Required("duration", "such as \"1/16\"")?.Exact() ?? Fraction.One,
            Group = fields.Optional("group")?.Whole(),
            Accent = fields.Optional("accent")?.Truth() ?? false,
            Slur = fields.Optional("slur")?.Word(RecipeWords.Slurs) ?? Slur.None,
        };
    }

    // A place has a colon, a pitch has none.
    private static WrittenTone Tone(JsonCursor cursor) =>
        cursor.IsText && cursor.Text().Contains(':')
            ? new WrittenTone(LayoutReader.PlaceOf(cursor))
            : new WrittenTone(null, PitchOf(cursor));

    private static SpelledPitch PitchOf(JsonCursor cursor)
    {
        if (!SpelledPitch.TryParse(cursor.Text(), out var pitch))
        {
            cursor.Refuse($"{cursor.Seen} is no pitch", "a note name and an octave such as \"C#4\"");
        }

        return pitch;
    }
}
