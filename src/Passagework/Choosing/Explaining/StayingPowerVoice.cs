using Passagework.Choosing.Measures;
using Passagework.Foundation;

namespace Passagework.Choosing.Explaining;

/// <summary>Staying power in words: where a beginner and an expert top out.</summary>
internal sealed class StayingPowerVoice : ICriterionVoice
{
    public string Missing => "nothing limits its tempo";

    public string Sentence(MeasuredCandidate candidate)
    {
        var (first, last) = Bpm(candidate);
        return $"a beginner tops out at about {first} beats a minute, an expert at about {last}, {Rate(candidate)}; faster than {Cap(candidate)} is taken to be no more music";
    }

    public string Brief(MeasuredCandidate candidate) =>
        $"a beginner tops out at {Bpm(candidate).First} beats a minute, an expert at {Bpm(candidate).Last}";

    public string Pro(MeasuredCandidate candidate) =>
        $"stays work: an expert still tops out at about {Bpm(candidate).Last} beats a minute, {Rate(candidate)}";

    public string Con(MeasuredCandidate candidate) =>
        $"grows easy: an expert gets to about {Bpm(candidate).Last} beats a minute where a beginner stops at {Bpm(candidate).First}, {Rate(candidate)}";

    public string Better(MeasuredCandidate better, MeasuredCandidate worse) =>
        $"more of the room for speed is left to an expert ({Shares.Against(100 * Left(better), 100 * Left(worse), " in 100")})";

    private static (string First, string Last) Bpm(MeasuredCandidate candidate)
    {
        var (first, last) = Facts.EndCeilings(candidate) ?? default;
        var notesPerBeat = Facts.NotesPerBeat(candidate);
        return (Shares.Bpm(first, notesPerBeat), Shares.Bpm(last, notesPerBeat));
    }

    private static double Left(MeasuredCandidate candidate) =>
        candidate.Forms.Average(form => form.StayingPower.Raw) ?? 0;

    private static string Rate(MeasuredCandidate candidate) =>
        $"{NumberWords.Of(Facts.NotesPerBeat(candidate), "note")} a beat";

    private static string Cap(MeasuredCandidate candidate) =>
        Shares.Bpm(StayingPower.Cap, Facts.NotesPerBeat(candidate));
}
