using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Passagework.Foundation;

namespace Passagework.Sound.Takes;

/// <summary>Takes to be made as JSON; the fields stand in <c>docs/sound.md</c>.</summary>
public static class TakeIdeaJson
{
    private const int LongestId = 60;

    private static readonly ImmutableArray<string> Fields =
    [
        "passagework",
        "id",
        "about",
        "exercise",
        "root",
        "notesPerBeat",
        "guitar",
        "seed",
        "plan",
        "made",
    ];

    private static readonly ImmutableArray<string> PlanFields =
    [
        .. TakeNumbers.All.Select(number => number.Name),
        .. TakeNumbers.Lists.Select(list => list.Name),
    ];

    /// <summary>Reads one; everything unknown or out of range is refused with its JSON path.</summary>
    public static Outcome<TakeIdea> Read(string text) => JsonText.Read(text, Read);

    /// <summary>An idea as a page; what was made of it may be added under <c>made</c>, which reading leaves out.</summary>
    public static JsonObject Of(TakeIdea idea)
    {
        var page = new JsonObject
        {
            ["passagework"] = 1,
            ["id"] = idea.Id,
            ["about"] = idea.About,
            ["exercise"] = idea.Exercise,
        };
        if (idea.Root is { } root)
        {
            page["root"] = root;
        }

        if (idea.NotesPerBeat is { } notes)
        {
            page["notesPerBeat"] = notes;
        }

        page["guitar"] = TakeWords.Guitars.Of(idea.Guitar);
        page["seed"] = idea.Seed;
        page["plan"] = PlanOf(idea.Plan);
        return page;
    }

    /// <summary>One idea of a file.</summary>
    internal static TakeIdea Read(JsonCursor page)
    {
        var fields = JsonFields.Of(page, Fields);
        fields.RequireFirstVersion();
        return new TakeIdea
        {
            Id = fields.Required("id", "\"id\": \"a-take\"") is { } id ? IdOf(id) : "",
            About = fields.Required("about", "\"about\": \"what is wrong\"")?.Text() ?? "",
            Exercise = fields.Required("exercise", "\"exercise\": \"groups-of-five-up\"")?.Text() ?? "",
            Root = fields.Optional("root")?.Text(),
            NotesPerBeat = fields.Optional("notesPerBeat") is { } notes ? (int)Whole(notes, 1, 8) : null,
            Guitar = fields.Optional("guitar")?.Word(TakeWords.Guitars) ?? GuitarSound.CleanElectric,
            Seed = fields.Optional("seed") is { } seed ? (uint)Whole(seed, 0, uint.MaxValue) : 1,
            Plan = fields.Required("plan", "\"plan\": { \"askedBpm\": 100 }") is { } plan
                ? PlanFrom(plan)
                : new TakePlan { AskedBpm = 60 },
        };
    }

    // It becomes the name of files.
    private static string IdOf(JsonCursor cursor)
    {
        var id = cursor.Text();
        var plain = id.All(letter =>
            char.IsAsciiLetterLower(letter) || char.IsAsciiDigit(letter) || letter == '-'
        );
        if (!plain || id.Length is 0 or > LongestId)
        {
            cursor.Refuse($"{cursor.Seen} is no short name", "1 to 60 of a-z, 0-9 and -");
        }

        return id;
    }

    private static JsonObject PlanOf(TakePlan plan)
    {
        var page = new JsonObject();
        foreach (var number in TakeNumbers.All)
        {
            if (number.Of(plan) is { } value)
            {
                page[number.Name] = value;
            }
        }

        foreach (var list in TakeNumbers.Lists)
        {
            if (list.Of(plan).Any())
            {
                page[list.Name] = new JsonArray([.. list.Of(plan).Select(value => (JsonNode)value)]);
            }
        }

        return page;
    }

    private static TakePlan PlanFrom(JsonCursor page)
    {
        var fields = JsonFields.Of(page, PlanFields);
        fields.Required("askedBpm", "\"askedBpm\": 100");
        var plan = new TakePlan { AskedBpm = 60 };
        foreach (var number in TakeNumbers.All)
        {
            if (fields.Optional(number.Name) is { } value)
            {
                var read = number.Name == "times" ? Whole(value, number.Least, number.Most) : value.Number();
                plan = number.With(plan, read);
            }
        }

        foreach (var list in TakeNumbers.Lists)
        {
            if (fields.Optional(list.Name) is { } values)
            {
                var read = values.List(value =>
                    list.Whole ? Whole(value, list.Range.Least, list.Range.Most) : value.Number()
                );
                plan = list.With(plan, [.. read]);
            }
        }

        if (plan.Check() is { } fault)
        {
            page.Faults.Add(fault with { Where = $"{page.Path}.{fault.Where}" });
        }

        return plan;
    }

    private static double Whole(JsonCursor value, double least, double most)
    {
        var number = value.Number();
        if (number != Math.Floor(number) || number < least || number > most)
        {
            value.Refuse(
                $"{value.Seen} is out of range",
                FormattableString.Invariant($"a whole number from {least} to {most}")
            );
        }

        return Math.Clamp(number, least, most);
    }
}
