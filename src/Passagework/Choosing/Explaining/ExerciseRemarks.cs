using System.Collections.Immutable;
using Passagework.Foundation;

namespace Passagework.Choosing.Explaining;

/// <summary>What speaks for an exercise and what against it, as a teacher would say it.</summary>
/// <param name="Pros">Merits, strongest first.</param>
/// <param name="Cons">Faults, strongest first.</param>
public sealed record ExerciseRemarks(ImmutableArray<string> Pros, ImmutableArray<string> Cons)
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
            Sentences(cons.Concat(HandRemarks.Cons(measured)))
        );
    }

    private static ImmutableArray<string> Sentences(IEnumerable<string> remarks) =>
        [.. remarks.Take(Most).Select(remark => NumberWords.Sentence(remark) + ".")];
}
