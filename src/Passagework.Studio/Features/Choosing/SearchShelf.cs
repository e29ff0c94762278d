using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Passagework.Choosing;
using Passagework.Exercises;
using Passagework.Studio.Data;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Features.Choosing;

/// <summary>Something that can be picked to be weighed.</summary>
/// <param name="Key">Its family, id or key.</param>
/// <param name="Title">What it is called.</param>
/// <param name="Kind">What it is: a whole family, one form, an own exercise.</param>
internal sealed record Pickable(string Key, string Title, string Kind)
{
    /// <summary>Whether it is one of the few that can be read through: a family, or the teacher's own.</summary>
    public bool IsListed { get; init; }
}

/// <summary>Finds exercises by name, to weigh them.</summary>
internal sealed class SearchShelf(Store store)
{
    private static readonly Lazy<ImmutableArray<Pickable>> OfLibrary = new(() =>
        [
            .. Library.Families.Select(family => new Pickable(
                family,
                CandidateSource.OfFamily(family).OrThrow().Title,
                "the family"
            )
            {
                IsListed = true,
            }),
            .. Library
                .All.Where(form => form.Id != form.Family)
                .Select(form => new Pickable(form.Id, ExerciseReading.TitleOf(form.Recipe), "one form")),
        ]
    );

    /// <summary>All that can be picked: families, then forms, then the teacher's own.</summary>
    public async Task<ImmutableArray<Pickable>> All(CancellationToken stop = default)
    {
        await using var db = await store.Open(stop);
        var own = await db
            .Exercises.AsNoTracking()
            .Where(row => row.ThrownAway == null)
            .OrderByDescending(row => row.Changed)
            .Select(row => new { row.Id, row.Title })
            .ToListAsync(stop);
        return
        [
            .. OfLibrary.Value,
            .. own.Select(row => new Pickable(ExerciseKey.Of(row.Id).Text, row.Title, "your own")
            {
                IsListed = true,
            }),
        ];
    }

    /// <summary>Those whose title or key holds every word, at most so many.</summary>
    public static ImmutableArray<Pickable> Matching(ImmutableArray<Pickable> all, string words, int most)
    {
        var wanted = words.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return wanted.Length == 0
            ? []
            :
            [
                .. all.Where(one =>
                        wanted.All(word =>
                            one.Title.Contains(word, StringComparison.OrdinalIgnoreCase)
                            || one.Key.Contains(word, StringComparison.OrdinalIgnoreCase)
                        )
                    )
                    .Take(most),
            ];
    }
}
