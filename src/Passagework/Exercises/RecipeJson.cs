using System.Text;
using Passagework.Foundation;

namespace Passagework.Exercises;

/// <summary>Recipes as JSON text; the format is described by <c>docs/recipe.schema.json</c>.</summary>
/// <example>
/// <c>RecipeJson.Read(RecipeJson.Write(recipe))</c> gives an equal recipe for every recipe that can be laid out.
/// </example>
public static class RecipeJson
{
    /// <summary>Reads a recipe; everything unknown or out of range is refused with its JSON path.</summary>
    public static Outcome<Recipe> Read(string text) =>
        // A letter takes at least one byte, so a text of this many is too long before it is encoded.
        text.Length > JsonText.MostBytes
            ? JsonText.TooLong(text.Length)
            : Read(Encoding.UTF8.GetBytes(text));

    /// <summary>Reads a recipe from UTF-8, at most 1 MB.</summary>
    public static Outcome<Recipe> Read(ReadOnlySpan<byte> utf8)
    {
        if (!JsonText.Parse(utf8).TryGet(out var document, out var fault))
        {
            return fault;
        }

        using (document)
        {
            var faults = new FirstFault();
            return Checked(RecipeReader.Read(new JsonCursor(document.RootElement, "$", faults)), faults);
        }
    }

    /// <summary>The recipe as text: only what differs from the defaults, in a fixed order, ending with a new line.</summary>
    public static string Write(Recipe recipe) => JsonPage.Print(RecipeWriter.Write(recipe));

    internal static Outcome<Recipe> Checked(Recipe recipe, FirstFault faults) =>
        (faults.Fault ?? RecipeRules.Check(recipe)) is { } fault ? fault : recipe;
}
