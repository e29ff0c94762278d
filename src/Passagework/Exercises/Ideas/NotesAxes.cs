using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Theory;

namespace Passagework.Exercises.Ideas;

/// <summary>Root and scale.</summary>
internal static class NotesAxes
{
    private const string Letters = "a letter A to G, with # or b";

    public static ImmutableArray<AxisRule> Rules { get; } =
    [
        new("notes.root", "root")
        {
            Text = recipe => recipe.Notes?.Root.ToString() ?? Unnamed(recipe),
            Choices = Roots,
            Said = (_, style, text) =>
                NoteName.TryParse(text, out var root) ? style.Of(root) : "no root named",
            TypedAs = (_, style, text) => NoteName.TryParse(text, out var root) ? style.Of(root) : text,
            Meant = (_, style, typed) =>
                PrintedNames.TryRead(typed, style.Notes, out var root) ? $"{root}" : typed,
            Set = Root,
            Typing = Letters,
            TypingIn = style =>
                style.Notes switch
                {
                    NoteNaming.LettersWithH => "a name such as C, Fis, B or H",
                    NoteNaming.Syllables => "a name Do to Si, with # or b",
                    _ => Letters,
                },
            Wraps = true,
        },
        new("notes.scale", "scale")
        {
            Text = recipe => recipe.Notes is { } notes ? TextOf(notes) : null,
            Words = recipe => $"semitones {recipe.Notes?.Semitones.Join(" ")}",
            Choices = _ => Scales.All.Select(scale => new AxisChoice(scale.Name, scale.Name)),
            Set = (recipe, text) => RecipeChange.Scale(recipe, text).Then(LayoutFit.Fitted),
            Typing = "a name, or semitones above the root such as 0 3 5 7 10",
        },
    ];

    private static string? Unnamed(Recipe recipe) => recipe.Written is null ? null : "";

    private static string TextOf(NoteSet notes) => notes.Scale ?? notes.Semitones.Join(" ");

    // The usual names, but the present root as the teacher calls it.
    private static IEnumerable<AxisChoice> Roots(Recipe recipe)
    {
        var notes = recipe.Notes;
        return Enumerable
            .Range(0, 12)
            .Select(pitchClass =>
                notes?.Root.PitchClass == pitchClass
                    ? notes.Root
                    : RootNames.Usual(pitchClass, notes?.IsMinor ?? true)
            )
            .Select(root => new AxisChoice($"{root}", $"{root}"));
    }

    // A written line that names none takes all twelve notes on that root: nothing is claimed about its scale.
    private static Outcome<Recipe> Root(Recipe recipe, string text)
    {
        if (recipe.Notes is not null)
        {
            return RecipeChange.Root(recipe, text).Then(LayoutFit.Fitted);
        }

        return NoteName.TryParse(text, out var root) && NoteSet.TryNamed(root, "chromatic", out var all)
            ? recipe with
            {
                Notes = all,
            }
            : TypedText.Unread(text, "note", Letters);
    }
}
