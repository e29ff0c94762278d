using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Rhythm;

namespace Passagework.Choosing.Explaining;

/// <summary>Rhythmic ambiguity in words: which feels the groups announce, and how long accents drift in the others.</summary>
internal sealed class AmbiguityVoice : ICriterionVoice
{
    public string Missing => "it has no groups of two notes or more, so no accents that could move";

    public string Sentence(MeasuredCandidate candidate) => Fit(candidate).Sentence ?? Missing;

    public string Brief(MeasuredCandidate candidate) => Sentence(candidate).Split("; ")[0];

    public string Pro(MeasuredCandidate candidate) => Sentence(candidate);

    public string Con(MeasuredCandidate candidate)
    {
        var locked = Locked(candidate);
        if (locked.Count == 0)
        {
            return Sentence(candidate);
        }

        var drift = Drift(candidate);
        var first = $"announces {NumberWords.List(locked)}: each group starts on a beat";
        return drift.Length == 0 ? first : $"{first}; {drift}";
    }

    public string Better(MeasuredCandidate better, MeasuredCandidate worse)
    {
        var (own, others) = (Locked(better), Locked(worse));
        if (others.Count == 0)
        {
            return "the accents visit more places of the beat";
        }

        return own.Count == 0
            ? $"no one feel is announced, where the other locks to {NumberWords.List(others)}"
            : $"the accents visit more places of the beat (it locks to {NumberWords.List(own)}, the other to {NumberWords.List(others)})";
    }

    // In which plain feels accents wander, and how long until they are back at a bar line.
    private static string Drift(MeasuredCandidate candidate)
    {
        var line = candidate.Forms[0].Realization.Line;
        var groups = LineGroups.Of(line);
        var meter = line.Recipe.Rhythm.Meter;
        var drifting = Fit(candidate)
            .Feels.Where(feel =>
                feel.Feel.Swing.IsStraight && feel.Grade is FeelGrade.Resolving or FeelGrade.Open
            )
            .Where(feel => feel.Feel.NotesPerBeat is 2 or 3 or 4)
            .Select(feel =>
                (
                    Name: FeelNames.Of(feel.Feel, meter),
                    Bars: GroupFit.Of(groups, meter, feel.Feel.NotesPerBeat)?.BarsToRealign ?? 0
                )
            )
            .GroupBy(feel => feel.Bars)
            .OrderBy(same => same.Key)
            .Select(same =>
                $"in {NumberWords.List([.. same.Select(feel => feel.Name)])} its accents drift for {NumberWords.Of(same.Key, "bar")}"
            );
        return NumberWords.List([.. drifting]);
    }

    // Of the ways of dividing the beat that the figure counts.
    private static List<string> Locked(MeasuredCandidate candidate) =>
        Fit(candidate)
            .Feels.Where(feel =>
                feel.Grade == FeelGrade.Locked
                && feel.Feel.Swing.IsStraight
                && Ambiguity.Divisions.Contains(feel.Feel.NotesPerBeat)
            )
            .Select(feel => FeelNames.Of(feel.Feel, Meter(candidate)))
            .ToList();

    private static Meter Meter(MeasuredCandidate candidate) =>
        candidate.Forms[0].Realization.Line.Recipe.Rhythm.Meter;

    private static GroupFit Fit(MeasuredCandidate candidate) =>
        candidate.Forms[0].Measured.Fit
        ?? throw new InvalidOperationException("A figure that was measured has groups.");
}
