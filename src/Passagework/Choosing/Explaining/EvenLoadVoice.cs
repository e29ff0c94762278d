namespace Passagework.Choosing.Explaining;

/// <summary>Even load in words: the hands first, then the fingers.</summary>
internal sealed class EvenLoadVoice : ICriterionVoice
{
    private const double Even = 0.95;
    private const double OneFinger = 1.05;
    private const double Matched = 0.85;

    public string Missing => "nothing is asked of either hand";

    public string Sentence(MeasuredCandidate candidate) => $"{Hands(candidate)}; {Fingers(candidate)}";

    public string Brief(MeasuredCandidate candidate)
    {
        var hands = $"the loads of the hands stand {Shares.Hundredths(Balance(candidate))} to 100";
        return Evenness(candidate) >= Even ? hands : $"{hands}; {Fingers(candidate)}";
    }

    public string Pro(MeasuredCandidate candidate) =>
        Evenness(candidate) >= Even
            ? $"keeps both hands busy ({Hundredths(candidate)}), and {Fingers(candidate)}"
            : Sentence(candidate);

    public string Con(MeasuredCandidate candidate)
    {
        if (Evenness(candidate) >= Even)
        {
            return Hands(candidate);
        }

        return Balance(candidate) >= Matched
            ? Fingers(candidate)
            : $"{Fingers(candidate)}, and {Hands(candidate)}";
    }

    public string Better(MeasuredCandidate better, MeasuredCandidate worse)
    {
        var (hands, fingers) = (Balance(better) - Balance(worse), Evenness(better) - Evenness(worse));
        return fingers > hands
            ? $"the notes lie on more fingers (as if {Shares.Against(Effective(better), Effective(worse), " shared them alike", 1)})"
            : $"the hands are more evenly loaded ({Shares.Against(100 * Balance(better), 100 * Balance(worse), " to 100")})";
    }

    private static string Hands(MeasuredCandidate candidate)
    {
        var busier = Facts.BusierHand(candidate);
        return busier is null
            ? $"the hands take turns being the busier one ({Hundredths(candidate)})"
            : $"the {busier} hand has more to do in most moves ({Hundredths(candidate)})";
    }

    private static string Hundredths(MeasuredCandidate candidate) =>
        $"the lighter load is {Shares.Hundredths(Balance(candidate))} to 100";

    private static string Fingers(MeasuredCandidate candidate)
    {
        var fretting = candidate.Forms[0].Measured.Fretting;
        if (fretting.EffectiveFingers < OneFinger)
        {
            return "one finger does everything";
        }

        if (Evenness(candidate) >= Even)
        {
            return "the fingers share the notes as in the plain scale";
        }

        var most = fretting.FingerShare.Max();
        var finger = Facts.FingerName(fretting.FingerShare.IndexOf(most) + 1);
        return $"the {finger} finger plays {Shares.InTen(most)} notes";
    }

    private static double Effective(MeasuredCandidate candidate) =>
        candidate.Forms.Average(form => form.Measured.Fretting.EffectiveFingers);

    private static double Balance(MeasuredCandidate candidate) =>
        candidate.Forms.Average(form => form.Measured.Balance) ?? 0;

    private static double Evenness(MeasuredCandidate candidate) =>
        candidate.Forms.Average(form => form.Measured.Evenness);
}
