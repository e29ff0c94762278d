using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Exercises;

/// <summary>Reads <c>layout</c>: the kind decides which fields belong.</summary>
internal static class LayoutReader
{
    public const int UsualNear = 5;

    public static Layout? Read(JsonCursor cursor)
    {
        var fields = JsonFields.Of(cursor);
        if (fields.Required("kind", "such as \"kind\": \"box\"") is not { } kindField)
        {
            return null;
        }

        var kind = kindField.Text();
        var known = RecipeFields.Layouts.FirstOrDefault(layout => layout.Kind == kind);
        if (known.Kind is null)
        {
            kindField.Refuse(
                $"unknown layout {Quote.Short(kind)}",
                NearestWord.Hint(kind, [.. RecipeFields.Layouts.Select(layout => layout.Kind)])
            );
            return null;
        }

        RefuseStrangers(fields, kind, known.Fields);
        return OfKind(kind, fields);
    }

    private static Layout OfKind(string kind, JsonFields fields) =>
        kind switch
        {
            "box" => new Layout.Box(Number(fields), Near(fields)),
            "per-string" => new Layout.PerString(
                fields.Required("count", "2 to 4 notes on each string")?.Whole() ?? 0,
                From(fields)
            ),
            "joined" => Joined(fields),
            "diagonal" => new Layout.Diagonal(Numbers(fields, "pattern", "such as [2, 3]"), From(fields)),
            "one-string" => new Layout.OneString(
                fields.Required("string", "a string number")?.Whole() ?? 0,
                fields.Required("from", "the lowest fret")?.Whole() ?? 0,
                fields.Required("to", "the highest fret")?.Whole() ?? 0
            ),
            "string-pair" => new Layout.StringPair(Strings(fields), Boxes(fields), Near(fields)),
            "chain" => new Layout.Chain(Strings(fields), Boxes(fields), Near(fields)),
            "one-side" => new Layout.OneSide(
                fields.Required("side", "low or high")?.Word(RecipeWords.Sides) ?? false,
                Number(fields),
                Near(fields)
            ),
            "open" => new Layout.OpenPosition(),
            _ => new Layout.Given(
                fields.Required("places", "such as [\"6:5\", \"6:8\"]")?.List(PlaceOf) ?? []
            ),
        };

    /// <summary>A place such as <c>6:5</c>.</summary>
    public static Place PlaceOf(JsonCursor cursor)
    {
        if (!Place.TryParse(cursor.Text(), out var place))
        {
            cursor.Refuse($"{cursor.Seen} is no place", "string:fret such as \"6:5\"");
        }

        return place;
    }

    private static Layout.Joined Joined(JsonFields fields)
    {
        var boxes = Boxes(fields);
        if (boxes.Length == 2)
        {
            return new Layout.Joined(boxes[0], boxes[1], Near(fields));
        }

        fields.Optional("boxes")?.Refuse(Bounds.Entries(boxes.Length), "two neighbours such as [1, 2]");
        return new Layout.Joined(1, 2, UsualNear);
    }

    private static int Number(JsonFields fields) => fields.Optional("number")?.Whole() ?? 1;

    private static int Near(JsonFields fields) => fields.Optional("near")?.Whole() ?? UsualNear;

    private static Place From(JsonFields fields) =>
        fields.Required("from", "the place of the first note such as \"6:5\"") is { } from
            ? PlaceOf(from)
            : default;

    private static ImmutableArray<int> Strings(JsonFields fields) =>
        Numbers(fields, "strings", "such as [2, 1]");

    private static ImmutableArray<int> Boxes(JsonFields fields) => Numbers(fields, "boxes", "such as [1, 2]");

    private static ImmutableArray<int> Numbers(JsonFields fields, string name, string example) =>
        fields.Required(name, example)?.List(item => item.Whole()) ?? [];

    private static void RefuseStrangers(JsonFields fields, string kind, ImmutableArray<string> known)
    {
        foreach (var name in fields.Names)
        {
            if (name == "kind" || known.Contains(name))
            {
                continue;
            }

            if (RecipeFields.Layouts.Any(layout => layout.Fields.Contains(name)))
            {
                var takes = known.IsEmpty ? "no field but 'kind'" : string.Join(", ", known);
                fields.Optional(name)?.Refuse($"does not belong to the layout '{kind}'", $"it takes {takes}");
            }
            else
            {
                fields.RefuseField(name, ["kind", .. known]);
            }
        }
    }
}
