using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Exercises.Ideas;

/// <summary>What each hand is told.</summary>
internal static class HandAxes
{
    private const string Nothing = "none";
    private const string Kept = "kept";
    private const string Without = "without ";

    // Which fingers may be used: all, then three, two and one of them.
    private static readonly ImmutableArray<ImmutableArray<int>> FingerSets =
    [
        [1, 2, 3, 4],
        [1, 2, 3],
        [1, 2, 4],
        [1, 3, 4],
        [2, 3, 4],
        [1, 2],
        [1, 3],
        [1, 4],
        [2, 3],
        [2, 4],
        [3, 4],
        [1],
        [2],
        [3],
        [4],
    ];

    public static ImmutableArray<AxisRule> Picking { get; } =
    [
        new("picking.technique", "technique of the picking hand")
        {
            Text = recipe => RecipeWords.Techniques.Of(recipe.Picking.Technique),
            Choices = _ => AxisText.Listed(RecipeWords.Techniques, TechniqueWord),
            Set = RecipeChange.Technique,
        },
        new("picking.first", "first stroke")
        {
            Text = recipe => RecipeWords.FirstStrokes.Of(recipe.Picking.First),
            Choices = _ => AxisText.Listed(RecipeWords.FirstStrokes, FirstWord),
            Set = RecipeChange.First,
            IsUsual = recipe => BeginsWithAStroke(recipe.Picking.Technique),
        },
        new("picking.fingers", "fingers of the picking hand")
        {
            Text = recipe => RecipeWords.FingerOrders.Of(recipe.Picking.Fingers),
            Choices = _ => AxisText.Listed(RecipeWords.FingerOrders, OrderWord),
            Set = (recipe, text) =>
                RecipeWords
                    .FingerOrders.Read(text)
                    .Then<Recipe>(order =>
                        RecipeChange.Picked(recipe, recipe.Picking with { Fingers = order })
                    ),
            IsUsual = recipe => recipe.Picking.Technique == Technique.Fingers,
        },
    ];

    public static ImmutableArray<AxisRule> Fretting { get; } =
    [
        new("fretting.avoid", "fingers of the fretting hand")
        {
            Text = recipe => Allowed(recipe).Join(" "),
            Choices = _ =>
                FingerSets.Select(fingers => new AxisChoice(fingers.Join(" "), FingerWords(fingers))),
            Set = (recipe, text) =>
                TypedText.Wholes(text, 1, 4).Then<Recipe>(fingers => Only(recipe, fingers)),
            Typing = "the fingers that may be used, 1 to 4, such as 1 3 4",
        },
        new("fretting.locks", "what is locked")
        {
            Text = recipe => recipe.Fretting.Locks.IsEmpty ? Nothing : Kept,
            Choices = Locks,
            IsRow = false,
            Set = Unlocked,
        },
        new("fretting.slides", "slides")
        {
            Text = recipe => RecipeWords.Slides.Of(recipe.Fretting.SlidesAtShifts),
            Choices = _ =>
                AxisText.Listed(
                    RecipeWords.Slides,
                    shifts => shifts ? "slides where the hand shifts" : "no slides"
                ),
            Set = (recipe, text) =>
                RecipeWords
                    .Slides.Read(text)
                    .Then<Recipe>(shifts =>
                        recipe with
                        {
                            Fretting = recipe.Fretting with { SlidesAtShifts = shifts },
                        }
                    ),
            IsUsual = recipe => recipe.Fretting.SlidesAtShifts,
        },
    ];

    /// <summary>Whether the first stroke decides anything.</summary>
    public static bool BeginsWithAStroke(Technique technique) =>
        technique is not (Technique.AllDown or Technique.AllUp or Technique.Fingers);

    private static IEnumerable<int> Allowed(Recipe recipe) =>
        Enumerable.Range(1, 4).Except(recipe.Fretting.Avoid);

    private static Recipe Only(Recipe recipe, ImmutableArray<int> fingers) =>
        recipe with
        {
            Fretting = recipe.Fretting with { Avoid = [.. Enumerable.Range(1, 4).Except(fingers)] },
        };

    private static string FingerWords(ImmutableArray<int> fingers) =>
        fingers.Length switch
        {
            4 => "all four fingers",
            1 => $"finger {fingers[0]}",
            _ => $"fingers {fingers.Join(" ")}",
        };

    // Each lock can be taken away by itself, or all together.
    private static IEnumerable<AxisChoice> Locks(Recipe recipe)
    {
        var locks = recipe.Fretting.Locks;
        yield return new AxisChoice(Nothing, "nothing locked");
        if (locks.IsEmpty)
        {
            yield break;
        }

        yield return new AxisChoice(Kept, $"{NumberWords.Of(locks.Length, "note")} locked");
        foreach (var held in locks)
        {
            yield return new AxisChoice(Without + AxisText.Of(held.Note), $"free {LockWords.Of(held)}");
        }
    }

    private static Outcome<Recipe> Unlocked(Recipe recipe, string text)
    {
        if (text == Nothing)
        {
            return NoteLocks.ClearAll(recipe);
        }

        return text.StartsWith(Without, StringComparison.Ordinal)
            ? TypedText
                .Whole(text[Without.Length..], 0, LengthRules.MostNotes)
                .Then<Recipe>(note => NoteLocks.Clear(recipe, note))
            : TypedText.Unread(text, "choice", "none, or the lock that is to be freed");
    }

    private static string TechniqueWord(Technique technique) =>
        technique switch
        {
            Technique.AllDown => "all down",
            Technique.AllUp => "all up",
            _ => RecipeWords.Techniques.Of(technique),
        };

    private static string FirstWord(FirstStroke first) =>
        first == FirstStroke.Best
            ? "first stroke as it is easier"
            : $"first stroke {RecipeWords.FirstStrokes.Of(first)}";

    private static string OrderWord(FingerOrder order) =>
        order switch
        {
            FingerOrder.IndexMiddle => "i and m in turn",
            FingerOrder.MiddleRing => "m and a in turn",
            FingerOrder.ThumbIndex => "p and i in turn",
            _ => "p i m a",
        };
}
