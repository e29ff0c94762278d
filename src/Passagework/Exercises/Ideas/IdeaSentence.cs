using Passagework.Foundation;

namespace Passagework.Exercises.Ideas;

/// <summary>Says in one plain sentence what an exercise is.</summary>
/// <example>
/// Five neighbouring notes of the A minor pentatonic, then the same from one note higher, up through box 1 to its top;
/// the root is held at the end.
/// </example>
public static class IdeaSentence
{
    /// <summary>
    /// Notes, figure, movement and ending; then what is out of the usual. What it is for is not in it, and what can't be
    /// laid out is still told as it was meant.
    /// </summary>
    /// <param name="recipe">The exercise.</param>
    /// <param name="style">How the room calls things.</param>
    public static string Of(Recipe recipe, RoomStyle style = default)
    {
        var details = string.Join(", ", DetailWords.Of(recipe, style));
        var parts = new[] { Idea(recipe, style), Ending(recipe.Movement.Ending), details };
        return NumberWords.Sentence(string.Join("; ", parts.Where(part => part.Length > 0))) + ".";
    }

    private static string Idea(Recipe recipe, RoomStyle style)
    {
        if (recipe.Written is { } written)
        {
            return Written(recipe, written, style);
        }

        if (recipe.Cell is not { } cell || recipe.Layout is null)
        {
            return "an exercise without notes";
        }

        var way = WayOfLine.Of(recipe);
        var motion = new MotionWords(recipe, way, style);
        var plain = cell is { Offsets.Length: 1 } && recipe.Movement.Step != 0;
        return plain && recipe.Notes is { } notes
            ? motion.Straight(ScaleWords.Of(notes, style))
            : new FigureWords(recipe, way, style).Phrase() + motion.Phrase();
    }

    private static string Written(Recipe recipe, WrittenLine written, RoomStyle style)
    {
        var notes = written.Entries.Count(entry => !entry.IsRest);
        var key = recipe.Notes is { } set ? $" in {ScaleWords.KeyOf(set, style)}" : "";
        return $"{NumberWords.InFull(notes)} {(notes == 1 ? "note" : "notes")} as written{key}";
    }

    private static string Ending(Ending ending) =>
        ending switch
        {
            Exercises.Ending.HoldLast => "the last note is held",
            Exercises.Ending.HoldRoot => "the root is held at the end",
            Exercises.Ending.FillBar => "the last bar is filled up towards the root",
            _ => "",
        };
}
