using Passagework.Studio.Data;

namespace Passagework.Studio.Features.Exercises;

/// <summary>Keeps what the teacher writes beside an exercise: remarks and labels.</summary>
internal sealed class AnnotateExercise(Store store, ChangeExercise change)
{
    /// <summary>Keeps both; for one of the library an own exercise is made first.</summary>
    public Task<ChangeAnswer> Annotate(
        OpenedExercise before,
        string notes,
        IEnumerable<string> labels,
        CancellationToken stop = default
    ) =>
        Saving.Try(async () =>
        {
            if (!before.Key.IsOwn(out var id))
            {
                var begun = await change.Begin(before.Recipe, before.Key.Text, stop);
                return begun is ChangeAnswer.Kept own
                    ? await Annotate(own.Exercise, notes, labels, stop)
                    : begun;
            }

            await using var db = await store.Open(stop);
            if (await ExerciseReading.Find(db, id, stop) is not { } row)
            {
                return new ChangeAnswer.Kept(before);
            }

            row.Notes = notes;
            row.Labels = string.Join(
                '\n',
                labels.Select(label => label.Trim()).Where(label => label.Length > 0).Distinct()
            );
            return await ExerciseAnswers.Save(db, row, stop);
        });
}
