using System.Collections.Immutable;
using System.Globalization;
using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Exercises.Ideas;

/// <summary>What layouts made of boxes leave open: which boxes, which strings, near which fret.</summary>
internal static class LayoutParts
{
    public static ImmutableArray<AxisRule> Rules { get; } =
    [
        new("layout.number", "box")
        {
            Text = recipe => recipe.Layout is Layout.OneSide side ? AxisText.Of(side.Number) : null,
            Choices = recipe => AxisText.Range(1, Boxes(recipe), AxisText.Of),
            Said = (recipe, style, text) => $"of {Said(recipe, style, text)}",
            Set = RecipeChange.Box,
        },
        new("layout.side", "side")
        {
            Text = recipe => recipe.Layout is Layout.OneSide side ? RecipeWords.Sides.Of(side.High) : null,
            Choices = _ => AxisText.Listed(RecipeWords.Sides, high => high ? "higher side" : "lower side"),
            Set = (recipe, text) =>
                RecipeWords
                    .Sides.Read(text)
                    .Then(high => Laid(recipe, layout => ((Layout.OneSide)layout) with { High = high })),
        },
        new("layout.boxes", "boxes")
        {
            Text = recipe => recipe.Layout is Layout.Joined joined ? Pair(joined.First, joined.Second) : null,
            Choices = recipe =>
                Enumerable
                    .Range(1, Boxes(recipe))
                    .Select(first => (First: first, Second: (first % Boxes(recipe)) + 1))
                    .Select(pair => Pair(pair.First, pair.Second))
                    .Select(pair => new AxisChoice(pair, pair)),
            Said = Said,
            Set = (recipe, text) => RecipeChange.Box(recipe, TypedText.Words(text).FirstOrDefault() ?? ""),
        },
        new("layout.boxes", "boxes")
        {
            Text = recipe => BoxList(recipe)?.Join(" "),
            Choices = recipe =>
                Lists(recipe).Select(list => list.Join(" ")).Select(list => new AxisChoice(list, list)),
            Said = Said,
            Meant = Meant,
            TypedAs = (recipe, style, text) => Shown(recipe, style, text).Join(" "),
            Set = (recipe, text) =>
                TypedText.Wholes(text, 1, 12).Then(boxes => Laid(recipe, layout => WithBoxes(layout, boxes))),
            Typing = "numbers of boxes in the order played, such as 1 2 3",
        },
        new("layout.strings", "strings")
        {
            Text = recipe => StringList(recipe)?.Join(" "),
            Words = recipe => Numbered.Strings(StringList(recipe) ?? [1]),
            Choices = recipe =>
                StringChoices(recipe).Select(list => new AxisChoice(list.Join(" "), Numbered.Strings(list))),
            Set = (recipe, text) =>
                TypedText
                    .Wholes(text, 1, 8)
                    .Then(strings => Laid(recipe, layout => WithStrings(layout, strings))),
            Typing = "string numbers from the lowest string, such as 2 1",
        },
        new("layout.near", "near fret")
        {
            Text = recipe => Near(recipe.Layout) is { } fret ? AxisText.Of(fret) : null,
            Choices = recipe =>
                AxisText.Range(0, recipe.Instrument.PlayableFrets, fret => $"near fret {fret}"),
            Set = RecipeChange.Near,
        },
    ];

    /// <summary>How many boxes the scale has.</summary>
    public static int Boxes(Recipe recipe) => recipe.Notes?.Semitones.Length ?? 1;

    /// <summary>Another layout of the same kind; locks stay where the notes do.</summary>
    public static Outcome<Recipe> Laid(Recipe recipe, Func<Layout, Layout> change) =>
        recipe.Layout is { } layout
            ? LockKeeping.Fit(recipe, recipe with { Layout = change(layout) })
            : new Fault("a written line has no layout to change");

    private static int? Near(Layout? layout) =>
        layout switch
        {
            Layout.Box box => box.Near,
            Layout.OneSide side => side.Near,
            Layout.Joined joined => joined.Near,
            Layout.StringPair pair => pair.Near,
            Layout.Chain chain => chain.Near,
            _ => null,
        };

    private static string Pair(int first, int second) => new[] { first, second }.Join(" ");

    private static ImmutableArray<int>? BoxList(Recipe recipe) =>
        recipe.Layout switch
        {
            Layout.StringPair pair => pair.Boxes,
            Layout.Chain chain => chain.Boxes,
            _ => null,
        };

    private static ImmutableArray<int>? StringList(Recipe recipe) =>
        recipe.Layout switch
        {
            Layout.StringPair pair => pair.Strings,
            Layout.Chain chain => chain.Strings,
            _ => null,
        };

    // A pair of strings begins with one box, a chain with all from the first.
    private static IEnumerable<ImmutableArray<int>> Lists(Recipe recipe) =>
        recipe.Layout is Layout.StringPair
            ? Enumerable.Range(1, Boxes(recipe)).Select(box => ImmutableArray.Create(box))
            : Enumerable
                .Range(2, Math.Max(0, Boxes(recipe) - 1))
                .Select(last => Enumerable.Range(1, last).ToImmutableArray());

    private static IEnumerable<ImmutableArray<int>> StringChoices(Recipe recipe)
    {
        var most = recipe.Layout is Layout.StringPair ? 2 : 3;
        var least = recipe.Layout is Layout.StringPair ? 2 : 1;
        for (var count = least; count <= most; count++)
        {
            for (var lowest = recipe.Instrument.Tuning.StringCount; lowest >= count; lowest--)
            {
                yield return [.. Enumerable.Range(lowest - count + 1, count).Reverse()];
            }
        }
    }

    // Box numbers of a value as the room counts them.
    private static string Said(Recipe recipe, RoomStyle style, string text) =>
        Numbered.Boxes([.. Shown(recipe, style, text)]);

    private static IEnumerable<string> Shown(Recipe recipe, RoomStyle style, string text) =>
        text.Split(' ')
            .Select(word => style.Box(int.Parse(word, CultureInfo.InvariantCulture), recipe.Notes));

    private static string Meant(Recipe recipe, RoomStyle style, string typed) =>
        TypedText.Wholes(typed, 1, Boxes(recipe)).TryGet(out var shown, out _)
            ? shown.Select(box => style.Boxes.Read(box, Boxes(recipe))).Join(" ")
            : typed;

    private static Layout WithBoxes(Layout layout, ImmutableArray<int> boxes) =>
        layout is Layout.StringPair pair
            ? pair with
            {
                Boxes = boxes,
            }
            : ((Layout.Chain)layout) with
            {
                Boxes = boxes,
            };

    private static Layout WithStrings(Layout layout, ImmutableArray<int> strings) =>
        layout is Layout.StringPair pair
            ? pair with
            {
                Strings = strings,
            }
            : ((Layout.Chain)layout) with
            {
                Strings = strings,
            };
}
