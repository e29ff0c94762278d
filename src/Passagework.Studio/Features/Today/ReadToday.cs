using Microsoft.EntityFrameworkCore;
using Passagework.Studio.Data;
using Passagework.Studio.Features.Exercises;
using Passagework.Studio.Features.Settings;

namespace Passagework.Studio.Features.Today;

/// <summary>Reads what the day's page shows.</summary>
internal sealed class ReadToday(Store store, ReadSettings settings)
{
    private const int MostExercises = 6;
    private const int MostDecisions = 3;

    /// <summary>What was worked on last, newest first.</summary>
    public async Task<TodayView> Read(CancellationToken stop = default)
    {
        var known = await settings.Read(stop);
        await using var db = await store.Open(stop);
        var rows = await db
            .Exercises.AsNoTracking()
            .Where(row => row.ThrownAway == null)
            .OrderByDescending(row => row.Changed)
            .Take(MostExercises)
            .ToListAsync(stop);
        var decisions = await db
            .Decisions.AsNoTracking()
            .OrderByDescending(row => row.Kept)
            .Take(MostDecisions)
            .ToListAsync(stop);
        var begun = await db.Exercises.CountAsync(row => row.ThrownAway == null && !row.OnShelf, stop);
        return new TodayView
        {
            IsNewcomer = known.IsNewcomer,
            HasDemo = await db.Exercises.AnyAsync(row => row.IsDemo && row.ThrownAway == null, stop),
            Begun = begun,
            Recent =
            [
                .. rows.Select(row => new RecentExercise(
                    ExerciseKey.Of(row.Id),
                    row.Title,
                    row.OnShelf,
                    row.Changed
                )),
            ],
            Decisions =
            [
                .. decisions.Select(row => new KeptChoice(row.Id, row.Verdict, row.Reason, row.Kept)),
            ],
        };
    }
}

/// <summary>What the day's page shows.</summary>
public sealed record TodayView
{
    /// <summary>Nothing yet.</summary>
    public static TodayView Empty { get; } = new();

    /// <summary>Whether the first minute is still shown.</summary>
    public bool IsNewcomer { get; init; }

    /// <summary>Whether something of the demo is there.</summary>
    public bool HasDemo { get; init; }

    /// <summary>Exercises that were begun and not put on the shelf.</summary>
    public int Begun { get; init; }

    /// <summary>Worked on last.</summary>
    public IReadOnlyList<RecentExercise> Recent { get; init; } = [];

    /// <summary>Chosen last.</summary>
    public IReadOnlyList<KeptChoice> Decisions { get; init; } = [];

    /// <summary>What waits, in one sentence.</summary>
    public string Sentence =>
        Begun switch
        {
            _ when IsNewcomer =>
                "One exercise lies open below: hear it, slow it down, and see the move that limits it.",
            0 => "Nothing waits. A new exercise begins with an idea.",
            1 => "One exercise is begun and not yet on the shelf.",
            _ => $"{Begun} exercises are begun and not yet on the shelf.",
        };
}

/// <summary>An exercise worked on last.</summary>
public sealed record RecentExercise(ExerciseKey Key, string Title, bool OnShelf, DateTimeOffset Changed);

/// <summary>A choice that was kept.</summary>
public sealed record KeptChoice(Guid Id, string Verdict, string Reason, DateTimeOffset Kept);
