using Passagework.Studio.Data;
using Passagework.Studio.Features.Choosing;

namespace Passagework.Studio.Tests.Features.Choosing;

/// <summary>Questions put to the features of a room.</summary>
internal static class Questions
{
    /// <summary>Measures and weighs a question.</summary>
    public static async Task<Weighed> Weigh(this Room room, Asked asked) =>
        (await room.Measure(asked)).Weigh(asked).OrThrow();

    /// <summary>Measures a question.</summary>
    public static async Task<Weighing> Measure(this Room room, Asked asked) =>
        (
            await room.Feature<WeighExercises>().Measure(asked, TestContext.Current.CancellationToken)
        ).OrThrow();

    /// <summary>Puts rows into the database.</summary>
    public static async Task Add(this Room room, params object[] rows)
    {
        await using var db = await room.Feature<Store>().Open(TestContext.Current.CancellationToken);
        db.AddRange(rows);
        await db.SaveChangesAsync(TestContext.Current.CancellationToken);
    }
}
