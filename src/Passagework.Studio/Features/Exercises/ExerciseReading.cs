using Microsoft.EntityFrameworkCore;
using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Exercises;

/// <summary>Turns rows into exercises; the only place that reads stored ideas.</summary>
internal static class ExerciseReading
{
    /// <summary>The exercise of a row with the names of its neighbouring steps.</summary>
    public static async Task<Outcome<OpenedExercise>> Read(
        StudioDb db,
        ExerciseRow row,
        CancellationToken stop
    )
    {
        var around = await db
            .Steps.AsNoTracking()
            .Where(step =>
                step.ExerciseId == row.Id && (step.Number == row.Step || step.Number == row.Step + 1)
            )
            .ToDictionaryAsync(step => step.Number, step => step.What, stop);
        return RecipeJson
            .Read(row.Recipe)
            .Then<OpenedExercise>(recipe => new OpenedExercise
            {
                Key = ExerciseKey.Of(row.Id),
                Recipe = recipe,
                Title = row.Title,
                Version = row.Version,
                OnShelf = row.OnShelf,
                IsDemo = row.IsDemo,
                Labels = LabelsOf(row),
                Notes = row.Notes,
                Undoes = row.Step > 0 ? around.GetValueOrDefault(row.Step, "") : null,
                Redoes = around.GetValueOrDefault(row.Step + 1),
            });
    }

    /// <summary>An exercise of the starting library.</summary>
    public static Outcome<OpenedExercise> Library(string id) =>
        Passagework
            .Exercises.Library.Find(id)
            .Then<OpenedExercise>(found => new OpenedExercise
            {
                Key = new ExerciseKey(id),
                Recipe = found.Recipe,
                Title = TitleOf(found.Recipe),
                OnShelf = true,
            });

    /// <summary>The title given, or one made from the idea.</summary>
    public static string TitleOf(Recipe recipe) =>
        string.IsNullOrWhiteSpace(recipe.Title) ? IdeaTitle.Of(recipe) : recipe.Title;

    /// <summary>Labels of a row.</summary>
    public static string[] LabelsOf(ExerciseRow row) =>
        row.Labels.Split('\n', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    /// <summary>The row of an own exercise that is there; null when there is none.</summary>
    public static Task<ExerciseRow?> Find(StudioDb db, Guid id, CancellationToken stop) =>
        db.Exercises.SingleOrDefaultAsync(row => row.Id == id && row.ThrownAway == null, stop);
}
