using System.Globalization;
using Passagework.Choosing.Measures;

namespace Passagework.Choosing.Explaining;

/// <summary>A mark of the teacher's own in words.</summary>
/// <param name="criterion">What is marked.</param>
/// <param name="place">Its place among the criteria.</param>
internal sealed class OwnMarkVoice(Criterion criterion, int place) : ICriterionVoice
{
    public string Missing => $"you have not marked it for '{criterion.Title}'";

    public string Sentence(MeasuredCandidate candidate) =>
        $"your mark for '{criterion.Title}' is {Mark(candidate)} of 1";

    public string Brief(MeasuredCandidate candidate) => $"your mark: {Mark(candidate)} of 1";

    public string Pro(MeasuredCandidate candidate) => Sentence(candidate);

    public string Con(MeasuredCandidate candidate) => Sentence(candidate);

    public string Better(MeasuredCandidate better, MeasuredCandidate worse) =>
        $"your mark for '{criterion.Title}' is higher ({Mark(better)} against {Mark(worse)})";

    private string Mark(MeasuredCandidate candidate) =>
        (candidate.Figures[place].Raw ?? 0).ToString("0.##", CultureInfo.InvariantCulture);
}
