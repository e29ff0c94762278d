using Passagework.Notation;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Features.Importing;

/// <summary>Makes an own exercise of a line that was read.</summary>
internal sealed class ImportExercise(ChangeExercise change, AnnotateExercise annotate)
{
    /// <summary>The exercise, begun and not yet on the shelf; what was guessed in reading stands in its remarks.</summary>
    public async Task<ChangeAnswer> Import(ImportStep.Read read, CancellationToken stop = default)
    {
        var answer = await change.Begin(read.Import.Recipe, stop: stop);
        return answer is ChangeAnswer.Kept begun && !read.Import.Remarks.IsEmpty
            ? await annotate.Annotate(begun.Exercise, RemarksOf(read), [], stop)
            : answer;
    }

    private static string RemarksOf(ImportStep.Read read)
    {
        var from = read.Upload.FileName.Length == 0 ? "pasted text" : read.Upload.FileName;
        return $"Read from {from}:\n" + string.Join('\n', read.Import.Remarks);
    }
}
