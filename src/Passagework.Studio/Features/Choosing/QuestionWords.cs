using System.Collections.Immutable;
using System.Globalization;
using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Studio.Features.Settings;
using static System.FormattableString;

namespace Passagework.Studio.Features.Choosing;

/// <summary>One of several values in words.</summary>
/// <param name="Key">How it is told from the others.</param>
/// <param name="Text">As it stands on the page.</param>
public readonly record struct WordOption(string Key, string Text);

/// <summary>The words of a question: what can be chosen, and the sentence that it makes.</summary>
internal static class QuestionWords
{
    /// <summary>For whom.</summary>
    public static ImmutableArray<WordOption> Levels { get; } =
    [.. LevelWords.All.Select((words, level) => new WordOption(Key(level), words))];

    /// <summary>Minutes a day.</summary>
    public static ImmutableArray<WordOption> Minutes { get; } =
    [
        new("2", "Two minutes"),
        new("5", "Five minutes"),
        new("10", "Ten minutes"),
        new("15", "Fifteen minutes"),
        new("20", "Twenty minutes"),
        new("30", "Half an hour"),
    ];

    /// <summary>How all of it is picked.</summary>
    public static ImmutableArray<WordOption> Techniques { get; } =
    [
        new(nameof(Technique.Alternate), "alternate strokes"),
        new(nameof(Technique.Economy), "economy strokes"),
        new(nameof(Technique.Sweep), "sweep strokes"),
        new(nameof(Technique.AllDown), "down-strokes only"),
        new(nameof(Technique.AllUp), "up-strokes only"),
        new(nameof(Technique.Metric), "strokes by the beat"),
        new(nameof(Technique.Hybrid), "plectrum and fingers"),
        new(nameof(Technique.Fingers), "the fingers"),
        new(nameof(Technique.Rake), "rakes"),
        new(nameof(Technique.Legato), "slurs"),
        new(nameof(Technique.Free), "strokes as they come easiest"),
    ];

    /// <summary>Size of the fretting hand.</summary>
    public static ImmutableArray<WordOption> HandSizes { get; } =
    [
        new("0.8", "very small, 80 of 100"),
        new("0.9", "small, 90 of 100"),
        new("1", "average"),
        new("1.1", "large, 110 of 100"),
        new("1.2", "very large, 120 of 100"),
    ];

    /// <summary>Least top tempo.</summary>
    public static ImmutableArray<WordOption> LeastTempos { get; } =
    [
        new("", "any"),
        .. Enumerable
            .Range(2, 9)
            .Select(notes => new WordOption(Key(notes), $"{notes} notes a second or more")),
    ];

    /// <summary>Widest stretch.</summary>
    public static ImmutableArray<WordOption> Stretches { get; } =
    [
        new("", "any"),
        .. Enumerable.Range(2, 6).Select(frets => new WordOption(Key(frets), $"{frets} frets at most")),
    ];

    /// <summary>In which feel it has to come out.</summary>
    public static ImmutableArray<WordOption> FeelOptions { get; } =
    [new("", "any"), .. Feels.All.Select(feel => new WordOption(feel.Key, feel.Name))];

    /// <summary>The key of a number.</summary>
    public static string Key(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>The number of a key; null for the empty one.</summary>
    public static double? Number(string key) =>
        double.TryParse(key, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;

    /// <summary>The options with the value at hand among them, whatever it is.</summary>
    public static ImmutableArray<WordOption> With(
        ImmutableArray<WordOption> options,
        string key,
        string text
    ) => options.Any(option => option.Key == key) ? options : options.Insert(0, new WordOption(key, text));

    /// <summary>The heading.</summary>
    public static string Title(Asked asked) => $"Which one for {Player(asked)}?";

    /// <summary>The player in words.</summary>
    public static string Player(Asked asked) => LevelWords.Player(asked.Player.LevelText);

    /// <summary>What narrows the question beside its sentence, in words; empty where nothing does.</summary>
    public static string Narrowed(Asked asked)
    {
        string?[] parts =
        [
            asked.HandSize == 1 ? null : Invariant($"hands {100 * asked.HandSize:0} of 100 of the average"),
            asked.Avoid.IsEmpty
                ? null
                : $"without the {string.Join(" and the ", asked.Avoid.Select(FingerNames.Of))} finger",
            asked.LeastTempo is { } notes
                ? Invariant($"top tempo of {notes:0.#} notes a second or more")
                : null,
            asked.WidestStretch is { } frets ? Invariant($"stretches of {frets} frets at most") : null,
            Feels.NameOf(asked.Feel) is { } feel ? $"home within four bars of {feel}" : null,
        ];
        return string.Join("; ", parts.Where(part => part is not null));
    }
}
