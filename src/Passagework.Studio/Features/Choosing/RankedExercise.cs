using System.Collections.Immutable;
using Passagework.Choosing;
using Passagework.Choosing.Explaining;
using Passagework.Engraving.Pictures;
using Passagework.Exercises;
using Passagework.Studio.Features.Exercises;

namespace Passagework.Studio.Features.Choosing;

/// <summary>One exercise in its place.</summary>
public sealed class RankedExercise
{
    private const string UsualForm = "up-and-down";
    private readonly ChoiceAnswer _answer;

    internal RankedExercise(ChoiceAnswer answer, Standing standing)
    {
        _answer = answer;
        (Index, Place) = (standing.Candidate, standing.Place);
        var source = answer.Candidates[Index].Source;
        (Title, Key) = (source.Title, KeyOf(source));
        Score = (int)Math.Round(100 * standing.Score);
        First = (int)Math.Round(100 * answer.OrderedWeightings.First[Index]);
        HeldBackBy = HeldBack(answer, Index);
    }

    /// <summary>Its number in the answer.</summary>
    public int Index { get; }

    /// <summary>1 for the best; equal ones have the same.</summary>
    public int Place { get; }

    /// <summary>What it is called.</summary>
    public string Title { get; }

    /// <summary>Where its page is; a family's is that of the form that was measured.</summary>
    public ExerciseKey Key { get; }

    /// <summary>Where it lies on the neck, such as "A minor pentatonic, box 1".</summary>
    public string Where(RoomStyle style) => LayoutWords.Of(_answer.Candidates[Index].Source.Forms[0], style);

    /// <summary>Its weighted sum, 0 to 100.</summary>
    public int Score { get; }

    /// <summary>Of 100 weightings in the teacher's order, how many put it first.</summary>
    public int First { get; }

    /// <summary>What costs it most, in a word or two.</summary>
    public string HeldBackBy { get; }

    /// <summary>Its value on a criterion, 0 to 1; null where it can't be measured.</summary>
    public double? ValueOf(int criterion) => _answer.Choice.Table.Candidates[Index].Marks[criterion].Value;

    /// <summary>The fact behind that value in a few words.</summary>
    public string BriefOf(int criterion) => FigureSentences.Brief(_answer, Index, criterion);

    /// <summary>Its merits and faults in sentences.</summary>
    public ExerciseRemarks Remarks => ExerciseRemarks.Of(_answer, Index);

    /// <summary>The whole sentence behind each value that counts.</summary>
    public ImmutableArray<string> Facts =>
        [.. _answer.Choice.Weights.Used.Select(k => FigureSentences.Of(_answer, Index, k))];

    private static ExerciseKey KeyOf(CandidateSource source)
    {
        var forms = Library.OfFamily(source.Id);
        return new ExerciseKey(
            forms.IsEmpty ? source.Id : (forms.FirstOrDefault(form => form.Form == UsualForm) ?? forms[0]).Id
        );
    }

    private static string HeldBack(ChoiceAnswer answer, int candidate)
    {
        var weights = answer.Choice.Weights;
        var most = weights.Used.MaxBy(k =>
            weights.Shares[k] * (1 - answer.Choice.Table.Counted(candidate, k))
        );
        return answer.Choice.Table.IsMissing(candidate, most)
            ? $"{answer.Criteria[most].Title}, not measured"
            : answer.Criteria[most].Title;
    }
}
