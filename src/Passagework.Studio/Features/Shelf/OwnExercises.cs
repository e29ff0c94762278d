using Microsoft.EntityFrameworkCore;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Studio.Data;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Features.Shelf;

/// <summary>Reads the teacher's own exercises for the shelf.</summary>
internal sealed class OwnExercises(Store store, ShelfMeasures measures)
{
    private const int MostThrownAway = 20;

    /// <summary>The latest change first, with whether each stands on the shelf.</summary>
    public async Task<IReadOnlyList<(ShelfExercise Exercise, bool OnShelf)>> Read(
        Player player,
        CancellationToken stop
    )
    {
        await using var db = await store.Open(stop);
        var rows = await db
            .Exercises.AsNoTracking()
            .Where(row => row.ThrownAway == null)
            .OrderByDescending(row => row.Changed)
            .ToListAsync(stop);
        return [.. rows.Select(row => (Of(row, player), row.OnShelf))];
    }

    /// <summary>Those thrown away last.</summary>
    public async Task<IReadOnlyList<ShelfForm>> ThrownAway(CancellationToken stop)
    {
        await using var db = await store.Open(stop);
        var rows = await db
            .Exercises.AsNoTracking()
            .Where(row => row.ThrownAway != null)
            .OrderByDescending(row => row.ThrownAway)
            .Take(MostThrownAway)
            .Select(row => new { row.Id, row.Title })
            .ToListAsync(stop);
        return [.. rows.Select(row => new ShelfForm(ExerciseKey.Of(row.Id), row.Title))];
    }

    private ShelfExercise Of(ExerciseRow row, Player player)
    {
        var isRead = RecipeJson.Read(row.Recipe).TryGet(out var recipe, out var fault);
        return new ShelfExercise
        {
            Key = ExerciseKey.Of(row.Id),
            Title = row.Title,
            Recipe = recipe ?? new Recipe(),
            Figures = isRead
                ? measures.Of(row.Recipe, recipe!, player)
                : new ShelfFigures { Fault = fault!.What },
            Labels = ExerciseReading.LabelsOf(row),
            Notes = row.Notes,
            IsDemo = row.IsDemo,
        };
    }
}
