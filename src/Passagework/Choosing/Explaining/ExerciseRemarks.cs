using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Choosing.Explaining;

/// <summary>What speaks for an exercise and what against it, as a teacher would say it.</summary>
/// <param name="Pros">Merits, strongest first.</param>
/// <param name="Cons">Faults, strongest first.</param>
/// <param name="Notes">What else has to be known: what could not be measured, who is as good on everything, pieces not counted.</param>
public sealed record ExerciseRemarks(
    ImmutableArray<string> Pros,
    ImmutableArray<string> Cons,
    ImmutableArray<string> Notes
)
{
    private const double Good = 0.6;
    private const double Poor = 0.4;
    private const int Most = 5;

    /// <summary>
    /// On the criteria that count a value from 0.6 is a merit and one to 0.4 a fault (limits chosen by us), those that matter most
    /// first; then what the hands do.
    /// </summary>
    public static ExerciseRemarks Of(ChoiceAnswer answer, int candidate)
    {
        var measured = answer.Candidates[candidate];
        var weights = answer.Choice.Weights;
        var values = weights
            .Used.Where(k => !answer.Choice.Table.IsMissing(candidate, k))
            .Select(k => (Place: k, Value: answer.Choice.Table.Counted(candidate, k)))
            .OrderByDescending(known => weights.Shares[known.Place] * Math.Abs(known.Value - 0.5))
            .ToList();
        var pros = values
            .Where(known => known.Value >= Good)
            .Select(known => Voices.Of(answer.Criteria, known.Place).Pro(measured));
        var cons = values
            .Where(known => known.Value <= Poor)
            .Select(known => Voices.Of(answer.Criteria, known.Place).Con(measured));
        return new ExerciseRemarks(
            Sentences(pros.Concat(HandRemarks.Pros(measured))),
            Sentences(cons.Concat(HandRemarks.Cons(measured))),
            [.. NotesOf(answer, candidate).Select(note => NumberWords.Sentence(note) + ".")]
        );
    }

    private static IEnumerable<string> NotesOf(ChoiceAnswer answer, int candidate)
    {
        foreach (var k in answer.Choice.Weights.Used.Where(k => answer.Choice.Table.IsMissing(candidate, k)))
        {
            yield return $"{answer.Criteria[k].Title} could not be measured: {Voices.Of(answer.Criteria, k).Missing}; it counts as half, and as anything when ways of weighing are tried";
        }

        if (answer.Dominators[candidate] is { } better)
        {
            yield return $"matched or beaten on everything that counts by {answer.Candidates[better].Source.Mention}";
        }

        foreach (var piece in answer.Candidates[candidate].PiecesLeftOut)
        {
            yield return $"the piece '{piece}' holds it and was not counted for it";
        }
    }

    private static ImmutableArray<string> Sentences(IEnumerable<string> remarks) =>
        [.. remarks.Take(Most).Select(remark => NumberWords.Sentence(remark) + ".")];
}
