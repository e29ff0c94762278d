using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Studio.Features.Today;
using Passagework.Theory;

namespace Passagework.Studio.Features.Choosing;

/// <summary>The words of a search: what can be chosen, and where it looked.</summary>
internal static class SearchWords
{
    private const int HighestFret = 17;

    /// <summary>Notes of a figure.</summary>
    public static ImmutableArray<WordOption> Lengths { get; } = [.. Enumerable.Range(3, 6).Select(Number)];

    /// <summary>How many are kept.</summary>
    public static ImmutableArray<WordOption> Counts { get; } = [Number(3), Number(5), Number(8), Number(12)];

    /// <summary>Scales and arpeggios.</summary>
    public static ImmutableArray<WordOption> AllScales { get; } =
    [.. Scales.All.Select(scale => new WordOption(scale.Name, scale.Name))];

    /// <summary>How the notes lie.</summary>
    public static ImmutableArray<WordOption> Kinds { get; } =
    [
        new("box", "in one box"),
        new("joined", "in two boxes joined"),
        new("per-string", "three to a string"),
        new("diagonal", "two and three to a string in turn"),
    ];

    /// <summary>Frets.</summary>
    public static ImmutableArray<WordOption> Frets { get; } =
    [
        .. Enumerable
            .Range(0, HighestFret + 1)
            .Select(fret => new WordOption(QuestionWords.Key(fret), $"near fret {fret}")),
    ];

    /// <summary>Tunings.</summary>
    public static ImmutableArray<WordOption> Tunings { get; } =
    [.. Tuning.Names.Select(name => new WordOption(name, $"{name} tuning"))];

    /// <summary>Roots, as the room names them.</summary>
    public static ImmutableArray<WordOption> Roots(RoomStyle style) =>
        [.. IdeaStart.Roots(style).Select(root => new WordOption(root.Item1, root.Item2))];

    /// <summary>What choosing boxes means for a kind of layout.</summary>
    public static string BoxesOf(string kind) =>
        kind switch
        {
            "box" => "In box",
            "joined" => "From box",
            _ => "From where this box begins",
        };

    /// <summary>Where and for whom finds were looked for, such as "In the A minor pentatonic near fret 5, for a beginner with alternate strokes".</summary>
    public static string Told(KeptFinds finds, RoomStyle style)
    {
        var wish = finds.Wish;
        var root = NoteName.TryParse(wish.Root, out var name) ? style.Of(name) : wish.Root;
        var tuning = wish.Tuning == Tuning.Standard.Text ? "" : $" in {wish.Tuning} tuning";
        var strokes = QuestionWords.Techniques.First(one => one.Key == finds.Asked.Technique.ToString()).Text;
        return $"In {root} {wish.Scale} near fret {wish.Near}{tuning}, for {QuestionWords.Player(finds.Asked)} with {strokes}";
    }

    private static WordOption Number(int number) => new(QuestionWords.Key(number), NumberWords.Of(number));
}
