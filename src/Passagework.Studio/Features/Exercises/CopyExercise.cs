using Passagework.Exercises;

namespace Passagework.Studio.Features.Exercises;

/// <summary>Makes an own exercise that begins as another one is.</summary>
internal sealed class CopyExercise(ChangeExercise change, KeepExercise keep)
{
    /// <summary>The copy, on the shelf, with a title that tells it from the first.</summary>
    public async Task<ChangeAnswer> Copy(
        OpenedExercise exercise,
        Recipe shown,
        CancellationToken stop = default
    )
    {
        var recipe = shown with { Id = null, Title = $"{exercise.Title}, copy" };
        var answer = await change.Begin(recipe, exercise.Key.Text, stop);
        return answer is ChangeAnswer.Kept begun ? await keep.Keep(begun.Exercise, stop) : answer;
    }
}
