using System.Globalization;
using Microsoft.EntityFrameworkCore;
using Passagework.Foundation;
using Passagework.Studio.Data;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Features.Choosing;

/// <summary>A decision as it is listed.</summary>
/// <param name="Id">Which.</param>
/// <param name="Kept">When, by the clock here.</param>
/// <param name="Day">The same as people write it, such as "25 November"; with the year when it is another.</param>
/// <param name="Exercise">The exercise chosen.</param>
/// <param name="Title">Its title then.</param>
/// <param name="Verdict">The verdict then.</param>
/// <param name="Reason">The teacher's reason; may be empty.</param>
internal sealed record KeptDecision(
    Guid Id,
    DateTimeOffset Kept,
    string Day,
    ExerciseKey Exercise,
    string Title,
    string Verdict,
    string Reason
);

/// <summary>Reads the decisions that were kept.</summary>
internal sealed class ListDecisions(Store store, TimeProvider time)
{
    /// <summary>All of them, the newest first.</summary>
    public async Task<IReadOnlyList<KeptDecision>> List(CancellationToken stop = default)
    {
        await using var db = await store.Open(stop);
        var rows = await db.Decisions.AsNoTracking().OrderByDescending(row => row.Kept).ToListAsync(stop);
        return rows.ConvertAll(Listed);
    }

    /// <summary>The question of one, to ask it again.</summary>
    public async Task<Outcome<Asked>> Question(Guid id, CancellationToken stop = default)
    {
        await using var db = await store.Open(stop);
        var row = await db.Decisions.AsNoTracking().SingleOrDefaultAsync(one => one.Id == id, stop);
        return row is null
            ? new Fault("there is no such decision, or it was thrown away", Right: "one of those below")
            : AskedJson.Read(row.Question);
    }

    private KeptDecision Listed(DecisionRow row)
    {
        var here = TimeZoneInfo.ConvertTime(row.Kept, time.LocalTimeZone);
        var format = here.Year == time.GetLocalNow().Year ? "d MMMM" : "d MMMM yyyy";
        return new KeptDecision(
            row.Id,
            here,
            here.ToString(format, CultureInfo.InvariantCulture),
            new ExerciseKey(row.Exercise),
            row.Title,
            row.Verdict,
            row.Reason
        );
    }
}
