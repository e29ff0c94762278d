using Microsoft.EntityFrameworkCore;
using Passagework.Exercises;
using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Exercises;

/// <summary>Lists every exercise by title: the teacher's own first, then the library.</summary>
internal sealed class ListKnown(Store store)
{
    /// <summary>All that can be opened.</summary>
    public async Task<IReadOnlyList<KnownExercise>> List(CancellationToken stop = default)
    {
        await using var db = await store.Open(stop);
        var own = await db
            .Exercises.AsNoTracking()
            .Where(row => row.ThrownAway == null)
            .OrderBy(row => row.Title)
            .Select(row => new { row.Id, row.Title })
            .ToListAsync(stop);
        return
        [
            .. own.Select(row => new KnownExercise(ExerciseKey.Of(row.Id), row.Title)),
            .. Library.All.Select(one => new KnownExercise(
                new ExerciseKey(one.Id),
                ExerciseReading.TitleOf(one.Recipe)
            )),
        ];
    }
}

/// <summary>An exercise by name.</summary>
public sealed record KnownExercise(ExerciseKey Key, string Title);
