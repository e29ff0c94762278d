using System.Collections.Immutable;
using Passagework.Choosing.Measures;
using Passagework.Foundation;

namespace Passagework.Choosing;

/// <summary>Weights files: JSON with weights or an order, anchors and marks.</summary>
public static class WishesJson
{
    private const int MostOwn = 32;
    private static readonly ImmutableArray<string> Fields =
    [
        "passagework",
        "weights",
        "order",
        "anchors",
        "marks",
    ];

    /// <summary>Reads a weights file; everything unknown or out of range is refused with its JSON path.</summary>
    public static Outcome<Wishes> Read(string text) => JsonText.Read(text, Read);

    private static Wishes Read(JsonCursor file)
    {
        var fields = JsonFields.Of(file, Fields);
        fields.RequireFirstVersion();
        var marks = fields.Optional("marks") is { } own ? MarksOf(own) : Wishes.Usual.Marks;
        ImmutableArray<string> known = [.. Criteria.All.Select(criterion => criterion.Id), .. marks.Keys];
        if (fields.Has("weights") && fields.Optional("order") is { } both)
        {
            both.Refuse("both weights and an order are given", "one of the two");
        }

        return new Wishes
        {
            Weights = fields.Optional("weights") is { } weights
                ? WeightsOf(weights, known)
                : Wishes.Usual.Weights,
            Order = fields.Optional("order") is { } order ? OrderOf(order, known) : [],
            Anchors = fields.Optional("anchors") is { } anchors ? AnchorsOf(anchors) : Wishes.Usual.Anchors,
            Marks = marks,
        };
    }

    private static ImmutableSortedDictionary<string, double> WeightsOf(
        JsonCursor weights,
        ImmutableArray<string> known
    )
    {
        var read = Each(weights, known, Weight);
        if (read.Values.All(weight => weight == 0))
        {
            weights.Refuse("no criterion counts", "at least one weight above 0");
        }

        return read;
    }

    private static double Weight(JsonCursor cursor)
    {
        var weight = cursor.Number();
        if (weight < 0)
        {
            cursor.Refuse($"a weight of {cursor.Seen}", "a number not below 0");
        }

        return weight;
    }

    private static ImmutableArray<string> OrderOf(JsonCursor order, ImmutableArray<string> known)
    {
        var seen = new HashSet<string>();
        var ids = order.List(item =>
        {
            var id = item.Text();
            if (item.IsText && !known.Contains(id))
            {
                item.Refuse($"unknown criterion {Quote.Short(id)}", NearestWord.Hint(id, known));
            }
            else if (!seen.Add(id))
            {
                item.Refuse($"{Quote.Short(id)} is there twice", "each criterion once");
            }

            return id;
        });
        if (order.IsList && ids.IsEmpty)
        {
            order.Refuse("no criterion counts", "at least one criterion");
        }

        return ids;
    }

    private static ImmutableSortedDictionary<string, Anchor> AnchorsOf(JsonCursor anchors) =>
        Each(anchors, [.. Criteria.All.Select(criterion => criterion.Id)], AnchorOf);

    private static Anchor AnchorOf(JsonCursor cursor)
    {
        var ends = cursor.List(item => item.Number());
        if (cursor.IsList && (ends.Length != 2 || ends[0] == ends[1]))
        {
            cursor.Refuse("no range", "two different numbers: worth 0 and worth 1");
        }

        return ends.Length == 2 ? Anchor.Own("", ends[0], ends[1]) : Anchor.Own("", 0, 1);
    }

    private static ImmutableSortedDictionary<string, ImmutableSortedDictionary<string, double>> MarksOf(
        JsonCursor marks
    )
    {
        var read = Each(marks, null, exercises => Each(exercises, null, Mark));
        foreach (var id in read.Keys.Where(id => Criteria.All.Any(criterion => criterion.Id == id)))
        {
            marks.Refuse($"{Quote.Short(id)} is measured", "a name of your own");
        }

        if (read.Keys.FirstOrDefault(id => !IsName(id)) is { } strange)
        {
            marks.Refuse($"{Quote.Short(strange)} is no name of a criterion", "letters, digits and dashes");
        }

        if (read.Count > MostOwn)
        {
            marks.Refuse(
                $"{read.Count} criteria of your own",
                FormattableString.Invariant($"at most {MostOwn}")
            );
        }

        return read;
    }

    private static bool IsName(string id) =>
        id.Length is > 0 and <= 60 && id.All(letter => char.IsLetterOrDigit(letter) || letter is '-' or '_');

    private static double Mark(JsonCursor cursor)
    {
        var mark = cursor.Number();
        if (mark is < 0 or > 1)
        {
            cursor.Refuse($"a mark of {cursor.Seen}", "from 0 to 1");
        }

        return Math.Clamp(mark, 0, 1);
    }

    // The fields of an object by name, each read in the same way.
    private static ImmutableSortedDictionary<string, T> Each<T>(
        JsonCursor owner,
        ImmutableArray<string>? known,
        Func<JsonCursor, T> read
    )
    {
        var fields = known is { } names ? JsonFields.Of(owner, names) : JsonFields.Of(owner);
        return fields
            .Names.ToList()
            .ConvertAll(name => KeyValuePair.Create(name, read(fields.Optional(name)!.Value)))
            .ToImmutableSortedDictionary(StringComparer.Ordinal);
    }
}
