using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Studio.Features.Today;

/// <summary>The sentence with which a new exercise begins: its choices, and the idea it stands for.</summary>
internal static class IdeaStart
{
    /// <summary>Families of the library whose figure can be moved through a box.</summary>
    public static IReadOnlyList<(string, string)> Figures { get; } =
    [
        ("groups-of-five", "Groups of five"),
        ("groups-of-three", "Groups of three"),
        ("groups-of-four", "Groups of four"),
        ("groups-of-six", "Groups of six"),
        ("groups-of-seven", "Groups of seven"),
        ("straight", "The plain scale"),
        ("reversed-threes", "Threes, turned round"),
        ("out-and-back-fours", "Fours, out and back"),
        ("every-other-note", "Every other note"),
    ];

    public static IReadOnlyList<(string, string)> Directions { get; } =
    [("up", "rising"), ("down", "falling"), ("up-and-down", "rising and falling")];

    public static IReadOnlyList<(string, string)> Steps { get; } =
    [("1", "one step"), ("2", "two steps"), ("3", "three steps")];

    public static IReadOnlyList<(string, string)> Roots(RoomStyle style) =>
        [.. "A Bb B C C# D Eb E F F# G Ab".Split(' ').Select(root => (root, Printed(root, style)))];

    public static IReadOnlyList<(string, string)> Scales { get; } =
    [
        .. "minor pentatonic;major pentatonic;minor blues;major;natural minor;dorian;mixolydian;harmonic minor"
            .Split(';')
            .Select(scale => (scale, scale)),
    ];

    /// <summary>Five boxes, by the numbers of the room.</summary>
    public static IReadOnlyList<(string, string)> Boxes(RoomStyle style) =>
        [.. Enumerable.Range(1, 5).Select(shown => ($"box {style.Boxes.Read(shown, 5)}", $"box {shown}"))];

    public static IReadOnlyList<(string, string)> NotesToTheBeat { get; } =
    [("4", "four"), ("3", "three"), ("2", "two"), ("6", "six"), ("5", "five"), ("1", "one")];

    public static IReadOnlyList<(string, string)> Techniques { get; } =
    [
        ("alternate", "strictly down and up"),
        ("economy", "sweeping on where it can"),
        ("all-down", "all down-strokes"),
        ("legato", "slurred"),
        ("fingers", "plucked with the fingers"),
    ];

    /// <summary>The idea of a filled-in sentence; the fault of a part names it.</summary>
    /// <param name="words">The chosen keys by name of the field.</param>
    public static Outcome<Recipe> Idea(Func<string, string?> words) =>
        Library
            .Find($"{words("family")}-up")
            .Then(found =>
                Axes(words)
                    .Aggregate(
                        (Outcome<Recipe>)(found.Recipe with { Id = null, Title = null, Purpose = null }),
                        (recipe, axis) => recipe.Then(before => IdeaChange.Set(before, axis.Key, axis.Value))
                    )
            )
            .Then<Recipe>(recipe => recipe with { Title = IdeaTitle.Of(recipe) });

    private static IEnumerable<(string Key, string Value)> Axes(Func<string, string?> words)
    {
        foreach (
            var (field, axis) in new[]
            {
                ("root", "notes.root"),
                ("scale", "notes.scale"),
                ("box", "layout"),
                ("step", "movement.step"),
                ("direction", "movement.direction"),
                ("notes", "rhythm.notesPerBeat"),
                ("technique", "picking.technique"),
            }
        )
        {
            if (words(field) is { } value)
                yield return (axis, value);
        }
    }

    private static string Printed(string root, RoomStyle style) =>
        NoteName.TryParse(root, out var name) ? style.Of(name) : root;
}
