using System.Text.Json;
using System.Text.Json.Serialization;
using Passagework.Foundation;

namespace Passagework.Studio.Features.Choosing;

/// <summary>Questions as the text that is kept of them.</summary>
public static class AskedJson
{
    private const int LongestPurpose = 300;
    private const int MostPicked = 200;

    /// <summary>How questions are written.</summary>
    internal static JsonSerializerOptions Options { get; } =
        new()
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
            Converters =
            {
                new JsonStringEnumConverter(JsonNamingPolicy.CamelCase, allowIntegerValues: false),
            },
        };

    /// <summary>The text of a question.</summary>
    public static string Write(Asked asked) => JsonSerializer.Serialize(asked, Options);

    /// <summary>The question of a text; refused where it cannot be read or a value is out of range.</summary>
    public static Outcome<Asked> Read(string text)
    {
        try
        {
            if (JsonSerializer.Deserialize<Asked>(text, Options) is not { } asked)
            {
                return Unreadable("it is empty");
            }

            return Check(asked) is { } fault ? fault : asked;
        }
        catch (Exception wrong)
            when (wrong is JsonException or NotSupportedException or InvalidOperationException)
        {
            return Unreadable("it is damaged, or of another version");
        }
    }

    /// <summary>The first value that is out of range; null when all are legal.</summary>
    internal static Fault? Check(Asked asked) =>
        Within(asked.Level is >= 0 and <= 4, "level", "0 to 4")
        ?? Within(asked.HandSize is >= 0.5 and <= 1.5, "hand size", "50 to 150 of 100")
        ?? Within(
            !asked.Avoid.IsDefault && asked.Avoid.All(finger => finger is >= 1 and <= 4),
            "avoided fingers",
            "1 to 4"
        )
        ?? Within(Enum.IsDefined(asked.Technique), "technique", "one of the list")
        ?? Within(
            asked.Purpose is { Length: <= LongestPurpose },
            "purpose",
            $"at most {LongestPurpose} letters"
        )
        ?? Within(asked.Minutes is >= 1 and <= 240, "minutes", "1 to 240")
        ?? Within(
            asked.LeastTempo is null or (> 0 and <= 100),
            "top tempo",
            "above 0, at most 100 notes a second"
        )
        ?? Within(asked.WidestStretch is null or (>= 0 and <= 36), "stretch", "0 to 36 frets")
        ?? Within(asked.Feel is null || Feels.NameOf(asked.Feel) is not null, "feel", "one of the list")
        ?? Within(
            !asked.Picked.IsDefault && asked.Picked.Length <= MostPicked,
            "exercises",
            $"at most {MostPicked}"
        )
        ?? Within(
            asked.Weights is { } weights
                && weights.Values.All(weight => weight is >= 0 and <= Asked.MostWeight),
            "how much each one matters",
            "0 to 100"
        );

    private static Fault? Within(bool isLegal, string what, string right) =>
        isLegal ? null : new Fault($"the {what} of the question is out of range", Right: right);

    private static Fault Unreadable(string why) =>
        new($"the kept question cannot be read: {why}", Right: "ask it anew");
}
