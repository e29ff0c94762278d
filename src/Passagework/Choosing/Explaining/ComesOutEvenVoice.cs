using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Choosing.Explaining;

/// <summary>Coming out even in words.</summary>
internal sealed class ComesOutEvenVoice : ICriterionVoice
{
    public string Missing => "it has no groups of whole pulses";

    public string Sentence(MeasuredCandidate candidate)
    {
        var even = Even(candidate);
        var all = Fit(candidate).Feels.Length;
        return even.Count switch
        {
            0 => $"comes out within {Phrase} in none of {NumberWords.Of(all)} feels",
            var count when count == all => $"comes out within {Phrase} in every feel",
            var count =>
                $"comes out within {Phrase} in {NumberWords.Of(count)} of {NumberWords.Of(all)} feels ({NumberWords.List(even)})",
        };
    }

    public string Brief(MeasuredCandidate candidate) =>
        $"in {NumberWords.OutOf(Even(candidate).Count, Fit(candidate).Feels.Length)} feels";

    public string Pro(MeasuredCandidate candidate) => Sentence(candidate);

    public string Con(MeasuredCandidate candidate) => Sentence(candidate);

    public string Better(MeasuredCandidate better, MeasuredCandidate worse) =>
        $"the groups come out within {Phrase} in more feels ({NumberWords.Of(Even(better).Count)} against {NumberWords.Of(Even(worse).Count)})";

    private static string Phrase => NumberWords.Of(GroupFit.PhraseBars, "bar");

    private static List<string> Even(MeasuredCandidate candidate) =>
        Fit(candidate)
            .Feels.Where(feel => feel.Grade != FeelGrade.Open)
            .Select(feel => FeelNames.Of(feel.Feel, candidate.Forms[0].Realization.Line.Recipe.Rhythm.Meter))
            .ToList();

    private static GroupFit Fit(MeasuredCandidate candidate) =>
        candidate.Forms[0].Measured.Fit
        ?? throw new InvalidOperationException("A figure that was measured has groups.");
}
