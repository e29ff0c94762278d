using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Exercises;

/// <summary>The ranges of a written line's values.</summary>
internal static class WrittenRules
{
    public static Fault? Check(WrittenLine written)
    {
        var entries = written.Entries;
        return Bounds.Count(entries.Length, 1, LengthRules.MostNotes, "$.written")
            ?? (
                entries.All(entry => entry.IsRest)
                    ? new Fault("the line holds only rests", "$.written", "at least one note")
                    : null
            )
            ?? Bounds.Each(entries, (entry, index) => Entry(entry, $"$.written[{index}]"))
            ?? Groups(written);
    }

    private static Fault? Entry(WrittenEntry entry, string path) =>
        LengthRules.Within(entry.Duration, entry.IsRest ? $"{path}.rest" : $"{path}.duration")
        ?? Bounds.Within(entry.Group ?? 0, 0, LengthRules.MostNotes, $"{path}.group")
        ?? (
            entry is { Place: not null, Pitch: not null }
                ? new Fault("has both a place and a pitch", path, "one of the two")
                : null
        )
        ?? Tones(entry, path);

    private static Fault? Tones(WrittenEntry entry, string path)
    {
        if (entry.With.IsEmpty)
        {
            return null;
        }

        if (entry.Slur != Slur.None)
        {
            return new Fault("a chord can't be slurred to", $"{path}.slur", "a chord is struck");
        }

        var strings = new HashSet<int?> { entry.Place?.String };
        return Bounds.Each(
            entry.With,
            (tone, index) => Tone(tone, entry.Place is null, strings, $"{path}.with[{index}]")
        );
    }

    private static Fault? Tone(WrittenTone tone, bool pitches, HashSet<int?> strings, string path)
    {
        if (tone.Place is null != pitches)
        {
            var right = pitches ? "pitches only, like its first" : "places only, like its first";
            return new Fault("a chord has places and pitches", path, right);
        }

        return tone.Place is { } place && !strings.Add(place.String)
            ? new Fault($"two tones on string {place.String}", path, "each tone of a chord on its own string")
            : null;
    }

    /// <summary>Groups are given for all notes or for none, and go on from note to note.</summary>
    private static Fault? Groups(WrittenLine written)
    {
        int? last = null;
        var given = written.Entries.First(entry => !entry.IsRest).Group is not null;
        return Bounds.Each(
            written.Entries,
            (entry, index) =>
            {
                if (entry.IsRest)
                {
                    return null;
                }

                var path = $"$.written[{index}]";
                if (entry.Group is not null != given)
                {
                    return new Fault(
                        "only some notes have a group",
                        path,
                        "a group for all notes or for none"
                    );
                }

                var falls = entry.Group < last;
                last = entry.Group;
                return falls
                    ? new Fault(
                        $"group {entry.Group} comes after a later one",
                        $"{path}.group",
                        "rising numbers"
                    )
                    : null;
            }
        );
    }
}
