using System.Collections.Immutable;
using Microsoft.EntityFrameworkCore;
using Passagework.Choosing;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Studio.Data;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Features.Choosing;

/// <summary>What a question names, found: exercises and the marks that the teacher gave them.</summary>
/// <param name="Sources">The exercises, each once.</param>
/// <param name="Marks">Marks by criterion and exercise.</param>
/// <param name="Missing">Named exercises that there are not, and why.</param>
internal sealed record GatheredExercises(
    ImmutableArray<CandidateSource> Sources,
    ImmutableSortedDictionary<string, ImmutableSortedDictionary<string, double>> Marks,
    ImmutableArray<Fault> Missing
);

/// <summary>Finds the exercises of a question: families, those of the library, the teacher's own.</summary>
internal sealed class GatherExercises(Store store)
{
    /// <summary>All that are named, or every family and, when wanted, the shelf's own ones.</summary>
    public async Task<GatheredExercises> Gather(Asked asked, CancellationToken stop = default)
    {
        await using var db = await store.Open(stop);
        var own = await db
            .Exercises.AsNoTracking()
            .Where(row => row.ThrownAway == null)
            .OrderBy(row => row.Id)
            .ToListAsync(stop);
        var found = asked.Picked.IsEmpty
            ? Everything(asked, own)
            : [.. asked.Picked.Distinct().Select(key => Find(key, asked.Technique, own))];
        var sources = found.Where(one => one.Source is not null).Select(one => one.Source!);
        var marks = await db.Marks.AsNoTracking().ToListAsync(stop);
        ImmutableArray<CandidateSource> each = [.. sources.DistinctBy(source => source.Id)];
        return new GatheredExercises(
            each,
            OwnCriteria.Of(marks, each),
            [.. found.Where(one => one.Fault is not null).Select(one => one.Fault!)]
        );
    }

    private static List<(CandidateSource? Source, Fault? Fault)> Everything(
        Asked asked,
        List<ExerciseRow> own
    )
    {
        var keys = Library.Families.AsEnumerable();
        if (asked.WithOwn)
            keys = keys.Concat(own.Where(row => row.OnShelf).Select(row => ExerciseKey.Of(row.Id).Text));

        return [.. keys.Select(key => Find(key, asked.Technique, own))];
    }

    private static (CandidateSource? Source, Fault? Fault) Find(
        string key,
        Technique technique,
        List<ExerciseRow> own
    ) => Source(key, technique, own).TryGet(out var source, out var fault) ? (source, null) : (null, fault);

    private static Outcome<CandidateSource> Source(string key, Technique technique, List<ExerciseRow> own)
    {
        if (!new ExerciseKey(key).IsOwn(out var id))
        {
            return Library.Families.Contains(key)
                ? CandidateSource.OfFamily(key, technique)
                : Library
                    .Find(key)
                    .Then<CandidateSource>(form => CandidateSource.OfForm(form.Id, form.Recipe, technique));
        }

        return own.Find(row => row.Id == id) is { } row
            ? RecipeJson
                .Read(row.Recipe)
                .Then<CandidateSource>(recipe =>
                    CandidateSource.OfForm(key, recipe with { Title = row.Title }, technique)
                )
            : new Fault(
                "one of the exercises is not there, or was thrown away",
                key,
                "another from the shelf"
            );
    }
}
