using Passagework.Foundation;

namespace Passagework.Choosing.Explaining;

/// <summary>Each figure in a sentence.</summary>
public static class FigureSentences
{
    /// <summary>The fact behind a candidate's figure on a criterion, or why there is none.</summary>
    public static string Of(ChoiceAnswer answer, int candidate, int criterion)
    {
        var voice = Voices.Of(answer.Criteria, criterion);
        return NumberWords.Sentence(
                answer.Choice.Table.IsMissing(candidate, criterion)
                    ? $"not measured: {voice.Missing}"
                    : voice.Sentence(answer.Candidates[candidate])
            ) + ".";
    }
}
