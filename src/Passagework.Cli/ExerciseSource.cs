using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Cli;

/// <summary>An exercise as it is named on the command line.</summary>
/// <param name="Name">Its id, or the name of its file.</param>
/// <param name="Recipe">Its idea.</param>
internal sealed record ExerciseSource(string Name, Recipe Recipe)
{
    /// <summary>An id of the starting library, a recipe file, or standard input for <c>-</c>.</summary>
    public static Outcome<ExerciseSource> Find(string name, Terminal terminal)
    {
        if (name != "-" && !File.Exists(name) && !LooksLikeFile(name))
        {
            return Library
                .Find(name)
                .Then<ExerciseSource>(found => new ExerciseSource(found.Id, found.Recipe));
        }

        return InputFile
            .Read(name, terminal)
            .Then(bytes => RecipeJson.Read(bytes))
            .Then<ExerciseSource>(recipe => new ExerciseSource(recipe.Id ?? NameOf(name), recipe));
    }

    private static bool LooksLikeFile(string name) =>
        name.EndsWith(".json", StringComparison.OrdinalIgnoreCase)
        || name.Contains('/', StringComparison.Ordinal)
        || name.Contains('\\', StringComparison.Ordinal);

    private static string NameOf(string file) =>
        file == "-" ? "exercise" : Path.GetFileNameWithoutExtension(file);
}
