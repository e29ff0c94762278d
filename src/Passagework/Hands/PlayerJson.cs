using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Hands;

/// <summary>Players as JSON text: a level, hand size, avoided fingers, clearing stroke and single numbers.</summary>
public static class PlayerJson
{
    private const double SmallestHand = 0.5;
    private const double LargestHand = 1.5;
    private static readonly ImmutableArray<string> Fields =
    [
        "passagework",
        "level",
        "handSize",
        "avoid",
        "clear",
        "parameters",
    ];

    private static readonly WordList<Clear> ClearWords = new(
        "clearing stroke",
        ("both", Clear.Both),
        ("after-down", Clear.AfterDown),
        ("after-up", Clear.AfterUp)
    );

    /// <summary>A level by name or as a number from 0 to 4, decimals between.</summary>
    public static Outcome<Player> ReadLevel(string text)
    {
        var named = Player.LevelNames.IndexOf(text);
        if (named >= 0)
        {
            return Player.At(named);
        }

        const System.Globalization.NumberStyles style = System.Globalization.NumberStyles.AllowDecimalPoint;
        return
            double.TryParse(text, style, System.Globalization.CultureInfo.InvariantCulture, out var level)
            && level is >= 0 and <= 4
            ? Player.At(level)
            : new Fault(
                $"unknown level {Quote.Short(text)}",
                Right: NearestWord.Hint(text, Player.LevelNames) + ", or a number from 0 to 4"
            );
    }

    /// <summary>Reads a player file; everything unknown or out of range is refused with its JSON path.</summary>
    public static Outcome<Player> Read(string text) => JsonText.Read(text, Read);

    private static Player Read(JsonCursor file)
    {
        var fields = JsonFields.Of(file, Fields);
        fields.RequireFirstVersion();
        var player = fields.Optional("level") is { } level ? LevelOf(level) : Player.At(2);
        return player with
        {
            HandSize = fields.Optional("handSize") is { } size ? Between(size, SmallestHand, LargestHand) : 1,
            Avoid = fields.Optional("avoid") is { } avoid ? avoid.List(FingerOf) : [],
            Clear = fields.Optional("clear") is { } clear ? clear.Word(ClearWords) : Clear.Both,
            Parameters = fields.Optional("parameters") is { } numbers
                ? ParametersOf(numbers, player.Parameters)
                : player.Parameters,
        };
    }

    private static Player LevelOf(JsonCursor level)
    {
        if (level.IsText)
        {
            return level.Take(ReadLevel(level.Text())) ?? Player.At(2);
        }

        return Player.At(Between(level, 0, 4));
    }

    private static int FingerOf(JsonCursor finger)
    {
        var number = finger.Whole();
        if (number is < 1 or > 4)
        {
            finger.Refuse($"{finger.Seen} is no fretting finger", "1, 2, 3 or 4");
        }

        return Math.Clamp(number, 1, 4);
    }

    private static HandParameters ParametersOf(JsonCursor numbers, HandParameters defaults)
    {
        var known = ParameterFile.Parameters.Select(entry => entry.Id).ToImmutableArray();
        var fields = JsonFields.Of(numbers);
        foreach (var name in fields.Names)
        {
            if (Find(name) is not { } entry)
            {
                fields.RefuseField(name, known);
            }
            else if (fields.Optional(name) is { } cursor)
            {
                defaults = defaults.With(entry.Id, Value(cursor, entry));
            }
        }

        return defaults;
    }

    // Greek letters may be written out.
    private static Parameter? Find(string name) =>
        ParameterFile.Parameters.FirstOrDefault(entry => entry.Id == name)
        ?? ParameterFile.Parameters.FirstOrDefault(entry => Latin(entry.Id) == name);

    private static string Latin(string id) =>
        id.Replace("Λ", "Lambda", StringComparison.Ordinal)
            .Replace("ω", "omega", StringComparison.Ordinal)
            .Replace("φ", "phi", StringComparison.Ordinal)
            .Replace("σ", "sigma", StringComparison.Ordinal);

    private static double Value(JsonCursor cursor, Parameter entry) =>
        entry.Id switch
        {
            "ω" => Between(cursor, 0, 0.95),
            "φ1" => Between(cursor, 1, 1),
            ['φ', ..] => Between(cursor, 1, 3),
            _ => Between(cursor, entry.Floor ?? 1, 2000),
        };

    private static double Between(JsonCursor cursor, double least, double most)
    {
        var number = cursor.Number();
        if (number < least || number > most)
        {
            cursor.Refuse(
                $"{cursor.Seen} is out of range",
                System.FormattableString.Invariant($"{least} to {most}")
            );
        }

        return Math.Clamp(number, least, most);
    }
}
