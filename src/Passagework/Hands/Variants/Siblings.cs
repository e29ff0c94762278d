using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Theory;

namespace Passagework.Hands.Variants;

/// <summary>The same idea elsewhere: in another box, in another key, from the other stroke.</summary>
/// <param name="Words">Such as <c>box 2</c> and <c>B♭</c>.</param>
/// <param name="Recipe">The exercise there; as it was where it can't be there.</param>
/// <param name="Top">Its top tempo; null where it can't be played there, or nothing limits it.</param>
/// <param name="Impossible">Why it can't be there; null where it can.</param>
public sealed record Sibling(string Words, Recipe Recipe, TopTempo? Top, string? Impossible);

/// <summary>Finds siblings and measures each for a player.</summary>
public static class Siblings
{
    /// <summary>The idea in every box of its scale; empty where its layout has no box.</summary>
    /// <param name="recipe">The exercise.</param>
    /// <param name="player">For whom.</param>
    /// <param name="style">How the room calls things.</param>
    public static ImmutableArray<Sibling> Boxes(Recipe recipe, Player player, RoomStyle style = default)
    {
        var count = recipe.Notes?.Semitones.Length ?? 0;
        var has = recipe.Layout is Layout.Box or Layout.OneSide or Layout.Joined or Layout.StringPair;
        return has
            ?
            [
                .. Enumerable
                    .Range(1, count)
                    .Select(box =>
                        Of(
                            $"box {style.Box(box, recipe.Notes)}",
                            RecipeChange.Box(recipe, AxisText.Of(box)),
                            recipe,
                            player
                        )
                    ),
            ]
            : [];
    }

    /// <summary>The idea on all twelve roots, from C up, the present one as the teacher calls it; empty where none is named.</summary>
    public static ImmutableArray<Sibling> Keys(Recipe recipe, Player player, RoomStyle style = default) =>
        recipe.Notes is { } notes
            ?
            [
                .. Enumerable
                    .Range(0, 12)
                    .Select(pitchClass =>
                        pitchClass == notes.Root.PitchClass
                            ? notes.Root
                            : RootNames.Usual(pitchClass, notes.IsMinor)
                    )
                    .Select(root => Of(style.Of(root), KeyChange.ToRoot(recipe, root), recipe, player)),
            ]
            : [];

    /// <summary>The idea from the other first stroke; null where there is no such choice.</summary>
    public static Sibling? FirstStroke(Recipe recipe, Player player) =>
        Variations.OtherFirst(recipe) is { } other ? Of(other.Words, other.Recipe, recipe, player) : null;

    private static Sibling Of(string words, Outcome<Recipe> changed, Recipe recipe, Player player)
    {
        var measured = changed.Then(found => Measurer.Measure(found, player));
        return measured.TryGet(out var done, out var fault)
            ? new Sibling(words, done.Realization.Line.Recipe, done.Top, null)
            : new Sibling(words, recipe, null, fault.What);
    }
}
