using Passagework.Foundation;

namespace Passagework.Choosing.Explaining;

/// <summary>Each figure in words.</summary>
public static class FigureSentences
{
    /// <summary>The fact behind a candidate's figure on a criterion, or why there is none.</summary>
    public static string Of(ChoiceAnswer answer, int candidate, int criterion) =>
        NumberWords.Sentence(
            Told(answer, candidate, criterion, (voice, measured) => voice.Sentence(measured))
        ) + ".";

    /// <summary>The same in a few words without a full stop, for a narrow column.</summary>
    public static string Brief(ChoiceAnswer answer, int candidate, int criterion) =>
        Told(answer, candidate, criterion, (voice, measured) => voice.Brief(measured));

    private static string Told(
        ChoiceAnswer answer,
        int candidate,
        int criterion,
        Func<ICriterionVoice, MeasuredCandidate, string> say
    )
    {
        var voice = Voices.Of(answer.Criteria, criterion);
        return answer.Choice.Table.IsMissing(candidate, criterion)
            ? $"not measured: {voice.Missing}"
            : say(voice, answer.Candidates[candidate]);
    }
}
