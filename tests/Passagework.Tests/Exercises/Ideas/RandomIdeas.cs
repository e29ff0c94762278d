using System.Collections.Immutable;
using CsCheck;
using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;

namespace Passagework.Tests.Exercises.Ideas;

/// <summary>Ideas that are reached from the library by a few random choices on random axes.</summary>
internal static class RandomIdeas
{
    private static readonly ImmutableArray<string> Typed =
    [
        "0 2 5 7 9",
        "1 – 3 2",
        "1 1 2 2",
        "0 1 2",
        "5 4 3 2 1 –",
        "2 4 1",
        "1/8 1/16 1/16",
        "1 1/2 1/2 2",
        "97.5",
        "0.58",
        "1/16",
        "E2 A2 D3 G3 C4 F4",
        "6:5 5:7 5:5 4:7 4:5",
        "3 5",
        "650",
        "7 11",
        "1 3 5",
        "2 4",
        "11/8",
        "",
        "rubbish",
        "-3",
        "99999999999",
    ];

    // Lines as they come from a file: with and without a key, a chord, a rest, a pitch whose place is free.
    private static readonly ImmutableArray<Recipe> Written =
    [
        RecipeJson
            .Read(
                """
                { "passagework": 1, "notes": { "root": "Bb", "scale": "natural minor" }, "written": [
                  { "place": "6:6", "duration": "1/8" }, { "rest": "1/8" }, { "pitch": "F4", "duration": "1/4" } ] }
                """
            )
            .OrThrow(),
        RecipeJson
            .Read(
                """
                { "passagework": 1, "written": [
                  { "place": "2:5", "with": ["3:5"], "duration": "1/4" },
                  { "place": "2:7", "duration": "1/4", "slur": "slide" } ] }
                """
            )
            .OrThrow(),
    ];

    /// <summary>A library exercise or a written line and up to eight changes; those that are refused leave it as it was.</summary>
    public static Gen<Recipe> All { get; } =
        Gen.Select(
            Gen.Int[0, Library.All.Length + Written.Length - 1],
            Gen.Select(Gen.Int[0, 9999], Gen.Int[0, 9999], Gen.Bool).Array[0, 8],
            (start, draws) =>
                draws.Aggregate(
                    start < Library.All.Length
                        ? Library.All[start].Recipe
                        : Written[start - Library.All.Length],
                    (recipe, draw) => Changed(recipe, draw.Item1, draw.Item2, draw.Item3)
                )
        );

    /// <summary>All axes of a recipe.</summary>
    public static ImmutableArray<Axis> AxesOf(Recipe recipe) =>
        [.. IdeaAxes.Of(recipe).SelectMany(group => group.Axes)];

    private static Recipe Changed(Recipe recipe, int which, int value, bool typed)
    {
        var axes = AxesOf(recipe);
        var axis = axes[which % axes.Length];
        var text = TextFor(axis, value, typed);
        return IdeaChange.Set(recipe, axis.Key, text).TryGet(out var changed, out _) ? changed : recipe;
    }

    // Repeats are only chosen: typed ones make lines of thousands of notes.
    private static string TextFor(Axis axis, int value, bool typed)
    {
        if (axis.Typing is not null && axis.Key != "movement.repeat" && (typed || axis.Choices.IsEmpty))
        {
            return Typed[value % Typed.Length];
        }

        return axis.Choices.IsEmpty ? axis.Text : axis.Choices[value % axis.Choices.Length].Key;
    }
}
