using Passagework.Foundation;
using Passagework.Studio.Data;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Features.Choosing;

/// <summary>Keeps which exercise was chosen, and why.</summary>
internal sealed class KeepDecision(Store store, TimeProvider time)
{
    /// <summary>Keeps it with the verdict as it stands.</summary>
    /// <param name="asked">The question.</param>
    /// <param name="answer">Its answer.</param>
    /// <param name="chosen">The exercise that the teacher takes, the best or another.</param>
    /// <param name="reason">The teacher's own words; may be empty.</param>
    /// <param name="stop">Gives up.</param>
    /// <returns>Why it could not be kept; null when it is.</returns>
    public Task<Fault?> Keep(
        Asked asked,
        Weighed answer,
        RankedExercise chosen,
        string reason,
        CancellationToken stop = default
    ) =>
        Saving.Do(async () =>
        {
            await using var db = await store.Open(stop);
            db.Decisions.Add(
                new DecisionRow
                {
                    Id = Guid.CreateVersion7(time.GetUtcNow()),
                    Kept = time.GetUtcNow(),
                    Question = AskedJson.Write(asked),
                    Exercise = chosen.Key.Text,
                    Title = chosen.Title,
                    Verdict = answer.Explanation.Verdict,
                    Reason = reason.Trim(),
                }
            );
            await db.SaveChangesAsync(stop);
        });
}
